// What is kept is for its owner's eyes, whatever the umask, and also where an earlier version left it open.

import { chmodSync, closeSync, existsSync, mkdirSync, openSync } from 'node:fs'

/** Makes the folder; one that is there already stays as its owner has it. */
export function ownersFolder(folder: string): void {
  if (mkdirSync(folder, { recursive: true, mode: 0o700 }) !== undefined) chmodSync(folder, 0o700)
}

/** Makes the SQLite file, so that it and what SQLite puts beside it are closed to others from the first byte. */
export function ownersFile(file: string): void {
  closeSync(openSync(file, 'a', 0o600))
  for (const path of [file, `${file}-wal`, `${file}-shm`]) if (existsSync(path)) chmodSync(path, 0o600)
}
