import { filesIn } from '../store/catalog-files.ts'
import { proveCatalog } from '../store/load-catalog.ts'
import { usePlatformSha256 } from '../store/platform-sha256.ts'
import { forgetPrepared, prepareCatalog, preparedCatalog } from '../store/prepared-catalog.ts'

/** Proves the catalog once, so that a start need not while nothing has changed. One that is refused is not prepared; why is told by whoever loads it. */
usePlatformSha256()
const files = filesIn('catalog')
if (!preparedCatalog(files)) {
  forgetPrepared()
  const proved = await proveCatalog(files)
  if (proved.ok) prepareCatalog(files, proved.catalog)
}
