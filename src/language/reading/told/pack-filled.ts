import type { Candidate } from '../../candidates/sentence/candidate.ts'
import type { CommandWords, OptionWords } from '../../sentence/vocabulary.ts'
import { cellsByVolts, cellsRead } from './cells-told.ts'
import { type PackTold, together, type WholePack, wholePack } from './told-pack.ts'

type Details = Readonly<Record<string, string>>

/** The detail that takes cells without a capacity. */
export const cellTypeOf = ({ options }: CommandWords): OptionWords | undefined =>
  options.find(({ kind }) => kind === 'cells') ?? options.find(({ kind }) => kind === 'chemistry')

/** The pack or its cells, of the parts that were told; volts and readings may tell how many cells there are. */
export function packTold(
  command: CommandWords,
  values: readonly Candidate[],
  options: Details,
  parts: PackTold | undefined,
  kept: Details,
  capacity_Ah: number | undefined,
) {
  const cellType = cellTypeOf(command)
  // Volts alone say nothing of cells whose type is open: the commonest are taken, and that is said.
  const isOpen =
    cellType !== undefined && !command.everyType && kept.pack === undefined && kept[cellType.name] === undefined
  const read = cellsRead(values, command)
  const open = parts ?? (isOpen || read ? {} : undefined)
  const byVolts = open && open.series === undefined ? cellsByVolts(options, command, open) : undefined
  // What only volts decide goes by the cells that they fit; what is charged is asked for.
  const [fitting, ...others] = cellType?.kind === 'cells' && byVolts ? byVolts : []
  const isByVolts = fitting !== undefined && others.length === 0 && open?.capacity_Ah === undefined
  const told = open && together([open, { series: read ?? (isByVolts ? fitting : undefined), capacity_Ah }])
  const cells = byVolts !== undefined && told?.series === undefined ? byVolts : undefined
  // How many cells there are is not answered by their type; nor is a type assumed where other details than the pack will do.
  const typeAnswers = cellType?.name !== 'cells' && !command.anyOf?.flat().includes('pack')
  const isFilled = !cells && told && (typeAnswers || Object.keys(told).length > 0)
  const whole = isFilled ? wholePack(told) : undefined
  const pack = command.options.find(({ kind }) => kind === 'pack')?.name
  const filled = whole ? fillPack(whole, pack, cellType) : {}
  const isSaid = whole && Object.keys(filled).length > 0
  return {
    filled,
    assumed: isSaid ? whole.assumed : [],
    doubts: [
      ...(isSaid ? whole.doubts.filter(doubt => doubt !== 'cellsUnknown' || whole.text !== undefined) : []),
      ...(isByVolts ? (['cellsByVolts'] as const) : []),
    ],
    told,
    /** Those that its volts may be of, where they are to be asked for. */
    cells,
  }
}

function fillPack(
  { text, cells, chemistry }: WholePack,
  pack: string | undefined,
  cellType: OptionWords | undefined,
): Record<string, string> {
  if (text !== undefined && pack !== undefined) return { [pack]: text }
  if (cellType === undefined) return {}
  return { [cellType.name]: cellType.kind === 'chemistry' ? chemistry : cells }
}
