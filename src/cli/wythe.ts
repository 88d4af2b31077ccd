import { usePlatformSha256 } from '../store/platform-sha256.ts'
import { runCommand } from './commands.ts'

usePlatformSha256()
const result = await runCommand(process.argv.slice(2))
const stream = result.exitCode === 2 ? process.stderr : process.stdout
stream.write(result.text)
process.exitCode = result.exitCode
