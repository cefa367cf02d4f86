// Which check stands behind each figure that a reply can show, from where its value comes, and how near ours must be.

import { commands } from '../../commands/index.ts'
import { english } from '../../src/ground/locale.ts'

export const checksFile = 'docs/checks.md'

export interface Check {
  /** Keys of figures, parted by spaces; "*" stands for any ending. */
  readonly figures: string
  readonly file: string
  /** As the test is called, or begins to be. */
  readonly title: string
  readonly source: string
  readonly error: string
}

const check = (figures: string, file: string, title: string, source: string, error: string): Check => ({
  figures,
  file: `tests/${file}.test.ts`,
  title,
  source,
  error,
})

const exact = 'exact'
const paper = 'worked on paper'
const held = 'tests on charges of cells held out of every fit'
const odex = 'the equations solved by the ODE library odex'
const counts = 'a count of what is kept'

export const checks: readonly Check[] = [
  check('wantedCurrent', 'outside/common-practice', '2600 mAh Li-ion on the same steps', 'common practice', exact),
  check('setCurrent', 'outside/common-practice', '650 mAh LiHV on steps', 'common practice', exact),
  check('cutoffPerCell cutoffPack', 'outside/common-practice', '$0.name is full at', 'common practice', exact),
  check('fullLi*', 'outside/common-practice', '$0.name is full at', 'common practice', exact),
  check(
    'highestRateLi* highestVoltsLi* storageLi* sourceFloorLi*',
    'outside/chemistries',
    '$name: damage, precharge',
    'datasheets and common practice',
    exact,
  ),
  check('labelCurrent highestCurrent', 'outside/figures', 'current pack: 3S 1000 LiPo 3C', paper, exact),
  check(
    'cRate chargeWithin percentWithin stopCapacity peakInputPower',
    'outside/figures',
    'time pack: 4S 1500',
    paper,
    exact,
  ),
  check('stopTimer', 'unit/charging/stops', 'is a tenth above the label', 'common practice', exact),
  check('inputPower inputCurrent peakInputCurrent', 'outside/energy', 'a charger of 85 % that gives', paper, '0.01 %'),
  check('chargeTime', 'outside/measured-charges', 'held-out totals', held, 'median 2 %, 95 of 100 within 8 %'),
  check(
    'timeToCutoff',
    'outside/measured-charges',
    'held-out times to the cutoff',
    held,
    'median 2 %, 95 of 100 within 8 %',
  ),
  check(
    'otherTime totalTime constantCurrentTime constantPowerTime constantVoltageTime stepsDownTime energyIn chargeIn',
    'outside/ode',
    'the ODE library gives the same',
    odex,
    '0.2 %',
  ),
  check(
    'enoughCurrent',
    'outside/enough-current',
    'by the ODE library a charge with it',
    odex,
    'over in time, and not in nine tenths of it',
  ),
  check(
    'prechargeTime',
    'unit/charging/simulate',
    'a cell drained to its damage threshold',
    paper,
    'within 2 to 6 minutes',
  ),
  check('heat warmest', 'outside/heat', 'a pouch of 5.45 Ah at 4C', 'UW-Madison, SAE 2023-01-0522', '10 °C'),
  check(
    'startCharge endCharge soc restPerCell restPack left',
    'outside/chemistries',
    'at %f V LiPo and Li-ion hold',
    'twelve published cells',
    '0.2 % beside their span',
  ),
  check(
    'packsReady packsLeft firstReady lastReady meanWait',
    'outside/session-plan',
    'is as good as the programme of a whole',
    'the programme solved by HiGHS',
    exact,
  ),
  check(
    'packCount inTime perHour sourceEnergyLeft sourceChargeLeft sourceLoss source#Left',
    'outside/energy',
    'a power bank of 74 Wh',
    paper,
    '0.001 Wh',
  ),
  check(
    'sourceEnergyOut packEnergy inputEnergy converterLoss source#Energy source#Power outputPower',
    'outside/energy',
    '110 W for half an hour',
    paper,
    exact,
  ),
  check('station deepCycle starter', 'unit/charging/source-plan', 'is what carries so many', paper, '0.01 %'),
  check(
    'stopVoltage stopPerCell stopAtRest energyGiven lendTime chargeLeft deviceCharge',
    'outside/pack-care',
    'stops where odex',
    odex,
    '0.5 % of the charge',
  ),
  check('mostPower', 'outside/energy', 'a battery gives no more than', paper, '0.3 %'),
  check('storagePerCell storagePack', 'outside/pack-care', 'is 3.85 V per cell', 'common practice', exact),
  check('storageCharge', 'outside/pack-care', 'leaves 55.2 to 72.6 %', 'twelve published cells', 'within their span'),
  check(
    'chargeMoved dischargeTime dischargeCurrent',
    'outside/pack-care',
    'at constant current takes',
    'definition of the ampere-hour',
    exact,
  ),
  check('energyOut', 'outside/pack-care', 'at constant power ends where', odex, '0.3 %'),
  check(
    'spread lowestCell highestCell lowestPerCell highestPerCell packVoltage',
    'outside/figures',
    'cells pack: 3S 2200',
    paper,
    exact,
  ),
  check('balanceTime balancingTime', 'outside/pack-care', 'balances 10 % of 1500 mAh', 'charge over current', exact),
  check('apart eachCurrent boardPower boardCapacity', 'outside/figures', 'parallel packs: 2x 3S 850', paper, exact),
  check('atOnce', 'unit/commands/pack-care', 'counts the packs that a charger takes at once', paper, exact),
  check('equalisingCurrent', 'outside/pack-care', 'sends the volts between two packs', 'Ohm’s law', exact),
  check(
    'equalisingCurrentMinute equalisingCurrentLater',
    'outside/pack-care',
    'keeps to the charge that flows',
    odex,
    '2 %',
  ),
  check(
    'cellResistance cellResistance25C firstResistance25C',
    'outside/pack-care',
    'takes a cell at 0 °C',
    'two published battery tables',
    'within their span',
  ),
  check('resistanceFor1Ah times', 'outside/figures', 'health pack: 3S 1500', paper, exact),
  check('likeFor1Ah', 'outside/pack-care', 'finds the %s sound', 'three published cells', 'within the span'),
  check('supplyPower supplyVoltage supplyCurrent current*S', 'outside/figures', 'supply source: PD 100W', paper, exact),
  check('usbSupply', 'outside/usb-pd', 'a %i W source offers exactly', 'USB Power Delivery', exact),
  check('chargerCount', 'unit/commands/trade', 'shares the supply among chargers', paper, exact),
  check('usable lasts', 'unit/commands/trade', 'says first whether packs at a current', paper, exact),
  check('supplyCurrent#V', 'outside/figures', 'supply charger: 0.1-20A', paper, exact),
  check('putBack usedShare mostUsed', 'outside/figures', 'percent pack: 3S 720', paper, exact),
  check('gauge area resistance drop', 'outside/wire', 'AWG %i is %f mm thick', 'ASTM B258, IEC 60028', '0.1 %'),
  check('rise fuse', 'outside/wire', 'lets AWG %i carry', 'NEC table 310.17', '15 %'),
  check('chargerSees', 'outside/wire', 'grows with temperature', 'IEC 60028', exact),
  check('error measuredPerCell', 'outside/figures', 'trim pack: 3S 2200', paper, exact),
  check('highestSetting', 'unit/commands/trade', 'sets a charger that charges high', paper, exact),
  check(
    'current capacity power voltage duration energy',
    'outside/unit-sums',
    "['energy capacity: 4400mAh voltage: 11.1V'",
    'IATA guidance, definitions',
    exact,
  ),
  check('partCharge partEnergy wallEnergy mass', 'outside/figures', 'energy pack: 4S 2200', paper, exact),
  check('energyPerMass', 'outside/figures', 'compare packs: 3S 2200', paper, exact),
  check('totalEnergy', 'outside/air-transport', 'air limits', 'IATA DGR 2.3', exact),
  check(
    'learnedCapacity firstCapacity ofLabel',
    'outside/pack-log',
    'of a $0.name cell lies in its band',
    'published cells',
    '3 %',
  ),
  check('meanCurrent meanRate', 'outside/figures', 'log charge name: wren put-back: 360mAh', paper, exact),
  check(
    'ratio reads scaleRaising scaleLowering',
    'outside/pack-log',
    'is mended by new = old',
    'how flight firmware describes it',
    exact,
  ),
  check('remindIn stayIn', 'outside/figures', 'remind me in: 45min', paper, exact),
  check('savedNames standardAnswers changes reminders charges', 'outside/figures', 'of what is kept', counts, exact),
  check('leftOut', 'unit/commands/log-csv', 'what is there already is not noted twice', counts, exact),
  check('records', 'unit/commands/member-data', 'the export is a document with everything', counts, exact),
]

/** Keys of all figures that a command has words for. */
export const figureKeys: ReadonlySet<string> = new Set(
  commands.flatMap(({ words }) => {
    const { figures = {} } = words(english('.')) as { figures?: object }
    return Object.keys(figures)
  }),
)

/** The figures that a row of the table speaks of. */
export function figuresOf({ figures }: Check): readonly string[] {
  return figures.split(' ').flatMap(figure => {
    const pattern = new RegExp(`^${figure.split('*').map(RegExp.escape).join('.+')}$`)
    return [...figureKeys].filter(key => (figure.includes('*') ? pattern.test(key) : key === figure))
  })
}

/** Without the marks that a test fills in for each of its rows, and the signs of code around a question. */
const shown = (title: string): string => title.replaceAll(/\$0?\.?name|%[dfis]/g, '…').replaceAll(/^\['|'$/g, '')

export const checksPage = (): string =>
  [
    '# What stands behind each figure',
    '',
    'Every figure that a reply can show, by its key in the JSON, with the check that holds it, where the value it is held',
    'against comes from, and how near it must be. A figure that stands in no row, or in two, fails the build.',
    '',
    '| figures | check | against | error |',
    '|---|---|---|---|',
    ...checks.map(one => {
      const keys = one.figures.split(' ').map(key => `\`${key}\``)
      return `| ${keys.join(', ')} | [${shown(one.title)}](../${one.file}) | ${one.source} | ${one.error} |`
    }),
    '',
  ].join('\n')
