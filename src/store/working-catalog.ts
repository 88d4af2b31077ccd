import { filesIn } from './catalog-files.ts'
import { proveCatalog, type LoadedCatalog } from './load-catalog.ts'
import { preparedCatalog } from './prepared-catalog.ts'

/** The catalog that is being worked on: as the build proved it, where it is the same to the byte, else read and proved now. */
export async function workingCatalog(folder: string, prepared?: string): Promise<LoadedCatalog> {
  const files = filesIn(folder)
  const catalog = preparedCatalog(files, prepared)
  return catalog ? { ok: true, catalog } : proveCatalog(files)
}
