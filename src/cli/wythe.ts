import { runCommand } from './commands.ts'

const result = await runCommand(process.argv.slice(2))
const stream = result.exitCode === 2 ? process.stderr : process.stdout
stream.write(result.text)
process.exitCode = result.exitCode
