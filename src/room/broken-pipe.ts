// A reader that has seen enough (`npm start | head`) closes the pipe: that is an end, not a fault.

export function endOnBrokenPipe(output: NodeJS.WriteStream): void {
  output.on('error', (error: NodeJS.ErrnoException) => {
    if (error.code === 'EPIPE') process.exit(0)
    throw error
  })
}
