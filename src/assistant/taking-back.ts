// How people take back what a question of theirs has changed.

const byUndo = [
  'kit save',
  'kit rename',
  'kit remove',
  'house set',
  'answer save',
  'answer edit',
  'answer move',
  'answer remove',
]

const ways: ReadonlyMap<string, string> = new Map([
  ...byUndo.map(name => [name, 'undo'] as const),
  ['log charge', 'log undo'],
  ['remind me', 'remind cancel'],
])

/** The command that takes back what this one did; undefined where none does. */
export const takesBack = (command: string): string | undefined => ways.get(command)
