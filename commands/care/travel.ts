// How packs may travel on a passenger aircraft: their watt-hours against the air limits.

import { defineCommand, required } from '../../src/assistant/old-command.ts'
import type { Figure } from '../../src/assistant/reply.ts'
import { travelCautions } from '../../src/cautions/travel.ts'
import type { Pack } from '../../src/charging/things/pack.ts'
import { type AirClass, airClass, airLimits, labelEnergy_Wh } from '../../src/charging/upkeep/transport.ts'
import type { Show } from '../../src/ground/show.ts'
import { bagKind } from '../../src/language/kinds/bag-kind.ts'
import { packKind } from '../../src/language/kinds/values.ts'
import { figuresIn } from '../shared/figure.ts'
import { followUp } from '../shared/follow-up.ts'
import { cite } from '../shared/working.ts'

interface Carried {
  readonly pack: Pack
  readonly count: number
  readonly name: string
  readonly energy_Wh: number
  readonly flies: AirClass
}

export const travel = defineCommand({
  name: 'travel',
  summary: 'Watt-hours of packs, and how they may go on a passenger aircraft.',
  options: {
    packs: required(bagKind, {
      description: 'the packs, with ";" between them; "4x" before one means four of it',
      phrase: text => text,
    }),
  },
  examples: [
    'travel packs: 4x 3S 720 LiHV; 2x 6S 1300 LiPo',
    'travel packs: 4S 8000 Li-ion',
    'travel packs: 3x 6S 5000 LiPo; 6S 12000 LiPo',
  ],
  plainWords: [
    'travel',
    'airline',
    'aeroplane',
    'airplane',
    'on a plane',
    'by air',
    'fly with',
    'take on board',
    'can i fly',
    'allowed on',
    'take on a plane',
    'hand luggage',
    'cabin luggage',
    'checked luggage',
    'checked baggage',
    'carry on',
    'watt hours',
    'how many wh',
  ],
  answer: ({ packs }, { show }) => {
    const items = packs.map(({ count, item }) => carried(item.pack, count))
    const { free_Wh, approved_Wh, approvedSpares } = airLimits.value
    const figure = figuresIn(show)
    const total_Wh = items.reduce((sum, { energy_Wh, count }) => sum + energy_Wh * count, 0)
    const figures: Figure[] = [
      ...items.map(({ name, energy_Wh }, index) =>
        figure.energy(`energy${index + 1}`, `one ${name}`, upward(energy_Wh)),
      ),
      figure.count(
        'packCount',
        'packs',
        items.reduce((sum, { count }) => sum + count, 0),
      ),
      figure.energy('totalEnergy', 'all together', upward(total_Wh)),
    ]
    return {
      headline: verdicts(items, show),
      figures,
      working: [
        ...items.map(item => energyLine(item, show)),
        `Limits for one pack: to ${show.energy(free_Wh)} carried; to ${show.energy(approved_Wh)} with the airline's approval, ${approvedSpares} loose ones at most; above that not by passengers (${cite(airLimits)}). The watt-hours printed on a label count before these.`,
        'Charge: carry packs at storage or below (common practice).',
      ],
      cautions: travelCautions,
      followUps: items
        .slice(0, 2)
        .map(({ name, pack }) =>
          followUp(`${name} to storage`, 'current', { pack: packKind.write(pack), to: 'storage' }),
        ),
    }
  },
})

function carried(pack: Pack, count: number): Carried {
  const energy_Wh = labelEnergy_Wh(pack)
  return { pack, count, name: packKind.write(pack), energy_Wh, flies: airClass(energy_Wh) }
}

/** To a hundredth, up: a limit must not be met by rounding. */
const upward = (energy_Wh: number): number => Math.ceil(energy_Wh * 100 - 1e-6) / 100

function verdicts(items: readonly Carried[], show: Show): string {
  const all = (flies: AirClass) => items.filter(item => item.flies === flies)
  const { approvedSpares } = airLimits.value
  const approved = all('with approval')
  const tooMany = approved.reduce((sum, { count }) => sum + count, 0) > approvedSpares
  return [
    sentence(
      all('not by passengers'),
      show,
      'may not go with passengers: leave behind or ship as dangerous goods',
    ),
    sentence(approved, show, "only with the airline's approval, and then in the cabin"),
    ...(tooMany
      ? [`Only ${approvedSpares} loose packs of that size are allowed: leave the others at home.`]
      : []),
    sentence(all('cabin'), show, 'may go in the cabin with you'),
  ]
    .filter(Boolean)
    .join(' ')
}

function sentence(items: readonly Carried[], show: Show, what: string): string {
  const names = items.map(({ name, energy_Wh }) => `${name} (${show.energy(upward(energy_Wh))})`)
  return names.length === 0 ? '' : `${names.join(', ')}: ${what}.`
}

function energyLine({ name, pack, energy_Wh }: Carried, show: Show): string {
  const { nominal_V } = pack.chemistry
  return `${name}: ${show.perCell(nominal_V.value)} × ${pack.series} × ${show.capacity(pack.capacity_Ah)} = ${show.energy(upward(energy_Wh))} (nominal volts: ${cite(nominal_V)}).`
}
