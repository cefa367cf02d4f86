// Why a notice was not posted on Matrix.

import type { Said } from '../ground/locale.ts'

export const leftRoom: Said = ({ say }) => say`I am not in that room any longer.`
export const noDirectRoom: Said = ({ say }) => say`There is no direct room with that person: they can invite me to one.`
