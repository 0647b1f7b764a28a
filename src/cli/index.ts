import { runCommand } from './run-command.ts'

// A reader that has seen enough (`| head`) closes the pipe; that is no mistake.
process.stdout.on('error', (error: NodeJS.ErrnoException) => {
  if (error.code === 'EPIPE') process.exit()
  throw error
})

process.exitCode = await runCommand(process.argv.slice(2))
