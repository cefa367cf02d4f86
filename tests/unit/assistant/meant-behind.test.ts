// What few words mean behind a question, by what was asked; and what a first question means by its values.

import { afterEach, beforeEach, describe, expect, it } from 'vitest'
import { commands } from '../../../commands/index.ts'
import type { Asking } from '../../support/ask.ts'
import { demoAsking } from '../../support/demo-asking.ts'
import { endFaultless } from '../../support/end-faultless.ts'

let asking: Asking
beforeEach(async () => {
  asking = await demoAsking(commands)
})
afterEach(() => endFaultless(asking))

/** The canonical text of the last answer's question, and its first lines. */
async function saidOf(turns: readonly string[]): Promise<string> {
  let said = ''
  for (const turn of turns) {
    const { question, command, verdict, headline } = await asking.ask(turn)
    said = `${question ?? command} ${verdict} ${headline}`.replaceAll('\n', ' ')
  }
  return said
}

type Talk = readonly [turns: readonly string[], said: RegExp]

const talks: readonly (readonly [string, readonly Talk[]])[] = [
  [
    'what feeds is asked about, and what it is to give',
    [
      [['two 6S 5200 lipo, one on each charger, 1C, what does the generator have to deliver'], /^supply .*gives \d+ W/],
      [['is our generator enough for a 6S 5200 lipo at 1C'], /^supply .*gives \d+ W/],
      [['generator good for 950 W, 6S 5200 lipo at 1C, how many simultaneously'], /^supply .*950W.*such charges/],
      [['a sack of 9 used packs, one 4S 2300 lipo reads 15.9, charge it at 0.5 A'], /^current .*current: 0\.5A/],
      [['2 kW generator forty paces downwind, 6S 5200 lipo at 5 A, what supply'], /^(?!.*count: 40)/],
      [['parked, engine off, i stand by the charger, 6S 5200 lipo at 25 % and 5 A, how long'], /^time (?!.*source)/],
      [['8x 6S 1150 lipo at 20%, duo charger 100 W a side, no board, 1C, how long'], /^plan .*chargers: 2x/],
      [
        ['3S 1350 from a 12V 60Ah lead battery, how many', 'its 8 years old, count on a third of what it says'],
        /source: .* 19\.8Ah/,
      ],
      [['storage volts of a 4S LiPo', 'Thank you. And per cell, what is that?'], /3\.85 V a cell/],
      [['LiFePO4 box, 12.8 V 32 Ah, how many 3S 2300 will it lift from storage to full'], /^source /],
      [['eight 4S 5200 a day, 26 flying days a year, 31 p a kilowatt-hour, what does it cost'], /^energy .*\d p/],
      [['five battery 2S LiHV 1050 but one charger one output at 1 A, how many hours'], /^plan packs: 5x/],
      [['a camera draws 4 W, how long does a full 3S 2300 lipo run it'], /^lend .*power: 4W/],
      [['anchor light, 9 W at 12 V, how long will a full 6S 5200 lipo run it'], /^lend .*power: 9W/],
      [['can my 3S 2300 lipo at 6 V run a 9 W lamp'], /do not charge/],
      [['used 1850 mAh of my 3S 2750 lipo in 5:30, what do I set the timer to'], /^energy .*duration: 5min30s/],
      [['show me everything that was altered in our settings lately, I do the minutes'], /^history (?!go with care)/],
      [['6S3P of 3400s in the cabin'], /^travel packs: 6S3P 10200mAh/],
      [['two pairs of 6S 5200 lipo on two chargers, how long'], /^plan packs: 4x 6S/],
      [['6S 5200 lipo at 1C, how long', 'and at 2C? the label allows five'], /^time (?!.*5 chargers)/],
    ],
  ],
  [
    'watt-hours of a label in a cabin, and none that are charged',
    [
      [['flying on Monday, it says 79 Wh 15.4 V, cabin or suitcase'], /100 Wh in the cabin/],
      [['energy of 79 Wh at 15.4 V in mAh'], /^energy /],
    ],
  ],
  [
    'so long there is: which current does, and how far the one that was set comes',
    [
      [['amps for a 4S 1700 lipo', 'no hurry, let it have three hours'], /^time .*within: 3h.* gentler/],
      [['6S 1350 lipo at 20 %, how long at 2C', 'i have only 20 minutes'], /^time .*current: 2\.7A.*within: 20min/],
    ],
  ],
  [
    'so many chargers, and so many more packs',
    [
      [['9x 6S 1150 lipo, four outlets, 1C, when done', 'we have only 2 outlets'], /plan .*ports: 2/],
      [['9x 6S 1150 lipo on three chargers, 1C, when done', 'we just got two of the chargers'], /9x 6S.* ports: 2/],
      [
        ['six 1S 350 lipo on the board, all 3.8 V', 'two more landed, 3.79 and 3.81'],
        /parallel packs: 6x 1S 350mAh LiPo at 3\.8V per cell; 1S .* at 3\.79V per cell; 1S .* at 3\.81V per cell go/,
      ],
      [['four 4S 1700 lipo on the board', 'and two more'], /packs: 6x 4S 1700mAh LiPo go with care/],
      [['four 4S 1700 lipo on the board', 'and two more, full ones'], /do not charge/],
      [
        ['four 4S 1700 lipo on the board, all at 3.7', 'and two more'],
        /: 4x .* at 3\.7V per cell; 2x 4S 1700mAh LiPo go/,
      ],
      [['three 6S 5200 lipo in parallel at 22.7', 'a fourth turned up'], /: 3x .* 22\.7V pack; 6S 5200mAh LiPo/],
      [['three 6S 5200 lipo in parallel at 22.7', 'and a fourth, same volts'], /: 4x 6S 5200mAh LiPo at 22\.7V pack/],
      [['three 6S 5200 lipo in parallel at 22.7', "the pink one's coming off"], /: 2x 6S 5200mAh LiPo at 22\.7V pack/],
      [['three 6S 5200 lipo in parallel at 22.7', 'another of those, but puffed'], /do not charge/],
      [['what do i set for a 4S 1700 lipo', 'and if its two of those together on the board'], /^parallel packs: 2x /],
    ],
  ],
  [
    'the same of another pack, or of another battery that feeds',
    [
      [
        ['storage volts of a 4S 2700 lipo', 'mine is a LiFe 2S 1900, same per cell?'],
        /storage .*LiFe.* 3\.30 V a cell/,
      ],
      [
        ['how many 3S 2300 lipo from a 70Ah agm', 'and from a lifepo4 battery?'],
        /source: 4S 70\.?0*Ah LiFe|4S 70000mAh LiFe/,
      ],
    ],
  ],
  [
    'a charge that is cut short has come so far by then',
    [
      [['i pull my 3S 1350 lipo after 20 min at 1.3 A, from 45 %, how full is it'], /time .*within: 20min/],
      [['a 12 V strip draws 1.2 A from my full 3S 2300 lipo, how long'], /^lend .*power: 14\.4W/],
      [['3S 1350 lipo at 45 %, what amps', 'i unplug it after 20 min at 1.3, what % is in it'], /time .*within: 20min/],
      [['our bus leaves in 40 min, 4s 1550 lipo landed, what amps'], /time .*within: 40min/],
      [['4s 1550 lipo draws 20 A, we start in 40 min, how long does it last'], /^(?!.*within)/],
    ],
  ],
  [
    'a number takes the place of the one before that it is like',
    [
      [['6s 1300 from 20 %, how long at 2C', 'and when at 90?'], /time .*6S 1300mAh.*from: 90%/],
      [['3s 2200 is at 10%, time to full at 1c', 'and if 60'], /3S 2200mAh.*from: 60%/],
      [['charge 4s 1500 at 5 degrees', 'and at 18'], /temperature: 18°C/],
      [['4S 1500 at 3.7 V per cell, how long to full at 1C?', 'and at 3.85?'], /from: 3.85V per cell/],
      [['6s 1300 from 20 %, how long at 2C', 'and 4s 1500?'], /4S 1500mAh/],
      [['3s 2200 at 10%, how long', 'and a 2200 4s'], /4S 2200mAh/],
      [['4s 1500 at 40 %, how long', 'and 2200 mAh?'], /2200mAh.*from: 40%/],
    ],
  ],
  [
    'how many at once is what the source gives, and not what it holds',
    [
      [['my bench supply gives 150 W, 6S 1500 lipo', 'how many at once'], /supply .* up to 3 such charges at once/],
      [
        ['how many 4S 1500 from a 12V 80Ah leisure battery', 'and at the same time?', 'how many at once'],
        /such charges/,
      ],
    ],
  ],
  [
    'cells of another count and type are no part of the pack before',
    [
      [['3S 1800 li-ion on steps of 1 2 3 A', 'storage volts of a 5S lihv'], /storage chemistry: 5S LiHV go /],
      [['amps for 3S 1800 lihv', 'and for 4S?'], /4S 1800mAh LiHV/],
    ],
  ],
  [
    'several of the pack before take their time together',
    [
      [['amps for 3S 1700 lihv', 'and for four of those'], /plan packs: 4x 3S 1700mAh LiHV/],
      [['how long for 6S 1100 lipo', 'and three of them one after another'], /plan packs: 3x 6S 1100mAh LiPo/],
      [['amps for 3S 1700 lihv', 'and for four of those on a board'], /parallel packs: 4x 3S 1700mAh LiHV/],
      [['how many 3S 1700 lipo from a 6S 9000 li-ion', 'how long is that all together'], /source .*9000/],
    ],
  ],
  [
    'a number that may be asked for is so many amps, where amps were named',
    [
      [['amps for 3S 1700 lihv', 'can i do 2'], /current .*current: 2A/],
      [['amps for 3S 1700 lihv', 'is 4 ok?'], /current .*current: 4A do not charge/],
      [['amps for 3S 1700 lihv', 'can i charge 3 of them'], /^(?!.*current: 3A)/],
    ],
  ],
  [
    'what the source is to keep is no level of the packs',
    [
      [['how many 3S 1700 lipo from a 6S 9000 li-ion', "just until it's at half"], /source .* leave: 50% go /],
      [['how many 3S 1700 lipo from a 6S 9000 li-ion', 'how many if I leave 20 %'], /leave: 20%/],
      [['how many 3S 1700 lipo from a 6S 9000 li-ion, keeping a third in it'], /leave: 33%/],
      [['how many 3S 1700 lipo from a 6S 9000 li-ion', 'and if the packs are at 40 %'], /from: 40%/],
      [['how many 3S 1700 lipo from a 12V 70Ah AGM', 'and if it is only at 70 %'], /charged: 70%/],
    ],
  ],
  [
    'what is taken along, and what goes in, is no other count of it',
    [
      [['Wh of a 6S 5200 lipo?', 'and may two of those come on the plane'], /travel packs: 2x 6S 5200mAh LiPo/],
      [['3S 2100 LiPo is at 11.4 V, what percent', 'so what goes back in till full'], /percent .*1[01]00 mAh fill it/],
    ],
  ],
  [
    'one charger or outlet more or less',
    [
      [['plan 3x 4S 1700 lipo with two 90W chargers', 'what if one charger fails'], /chargers: 0.1-9A by 0.1 90W/],
      [['plan 3x 4S 1700 lipo with two 90W chargers', 'and with a third charger'], /chargers: 3x 0.1-9A by 0.1 90W/],
      [['nine 1S 350 lipo on a 5 port charger', 'without one port'], /ports: 4/],
    ],
  ],
  [
    'watts from a named thing are what it gives',
    [[['plan 3x 4S 1700 lipo with two 90W chargers', 'and only 120W off the inverter'], /sources?: mains 120W/]],
  ],
  [
    'a source alone lends itself to what is charged from it',
    [[['car battery 70Ah resting at 12.6V', 'how many 3S 1300 will it fill'], /source .*rest 12.6V 70Ah/]],
  ],
  [
    'a rate holds for another pack, and amps stay amps',
    [
      [['amps for 4s 2600 at 1C', 'and for 5000?'], /5000mAh.*current: 5A/],
      [['6s 1300 at 2C how long', 'and the 1800?'], /1800mAh.*current: 3.6A/],
      [['time for 4s 4000 at half C', 'and for 2000'], /2000mAh.*current: 1A/],
      [['how long at 2A for 3s 1000', 'and for 2000?'], /2000mAh.*current: 2A/],
    ],
  ],
  [
    'another type keeps what was asked',
    [
      [['storage voltage for a 3s lipo', 'and li-ion?'], /storage .*3S Li-ion/],
      [['storage voltage 4s', 'life?'], /storage .*4S LiFe/],
      [['what cutoff LiFe 2S', 'and lihv'], /trim .*2S LiHV/],
      [['how full is lipo at 3.8', 'life?'], /percent .*LiFe.*3.8/],
      [['storage 4s', 'what is lihv?'], /handbook/],
    ],
  ],
  [
    'what is taken along',
    [
      [['can i take a 4s 1300 in the cabin', 'and the 6s 4500'], /travel .*6S 4500/],
      [['is a 3S 5000 allowed on the plane?', 'And a 4S of that size?'], /travel .*4S 5000/],
      [['can i take a 6s 8000 on the plane', 'ok and two 4s 5000'], /travel .*4S 5000/],
      [['may I bring a 12S 5000 on the aeroplane', 'or as two 6S?'], /travel .*2x 6S 5000/],
      [['travel 6s 4500 cabin', 'how long to charge it'], /time .*6S 4500/],
    ],
  ],
  [
    'a rate for packs on chargers',
    [
      [['i have a 60W charger and four 3s 1000', 'at 1C?'], /plan .*3S 1000mAh.*at 1A.*60W/],
      [['two chargers 80W each and six 4s 1500, how long', 'at 1C?'], /plan .*at 1.5A/],
    ],
  ],
  [
    'no most, nor a soonest',
    [
      [['what amps for 4s 1500', 'most of them are old'], /^(?!.*current: 3A)/],
      [['storage 4s 1500', 'max'], /^(?!.*current:)/],
      [['how long for 4s 1500', 'no hurry'], /^(?!.*current: 3A)/],
    ],
  ],
  [
    'one cell of a pack',
    [
      [['one cell of my 4s 2200 is at 3.62, rest 3.80'], /cells .*4S.*3.62V 3.8V 3.8V 3.8V/],
      [['4s 1500 after flight, cell 3 is 3.4, others 3.7'], /cells .*4S/],
      [['how long 4s 1500 at 1C', 'one cell is at 3.5, others at 3.75'], /cells .*4S/],
      [['how full is one cell at 3.7'], /percent/],
    ],
  ],
  [
    'so many of another size',
    [
      [['6s 5000 from a leisure battery 100Ah, how many', 'three of 2200 3s'], /source .*3S 2200.*count: 3/],
      [['board with four 2s 450', 'six of 600'], /6x 2S 600/],
      [['plan for 4x 6s 1300 with 100W', 'six of 1800'], /6x 6S 1800/],
    ],
  ],
  [
    'a first question',
    [
      [['4s 1300 lipo on the pocket charger from the car'], /^(?!.*rongCharger)/],
      [['4s 1300 lipo on the flightbox from the car'], /^(?!.*rongCharger)/],
      [['4s 1300 lipo on the charger from the toy car'], /do not charge/],
      [['can I use the charger from the car for my 3s lipo'], /Charger|Do not use that/],
      [['What current for a 4S 1500 on the pocket charger in the car?'], /4S 1500/],
      [['charge 4s 1300 with a car charger for lead batteries'], /do not (?:charge|use it)/],
      [['my 3S reads 9.6 V after a flight, ok to charge?'], /.*9.6V/],
      [['6s reads 19.8, safe to charge?'], /.*19.8V/],
      [['3s at 8.7v ok to charge?'], /.*8.7V/],
      [['my 3s 1300 reads 9.6 v after flight, what amps'], /current .*3S 1300mAh.*from: 9.6V/],
      [['what supply for 4s 2200 at 1c from 12v'], /supply .*12V/],
    ],
  ],
  [
    'a figure of what feeds, and other words for a change',
    [
      [['what does my 65W usb brick do for a 4s 1500', 'the 100W one then'], /source: PD 100W/],
      [['12v 20A supply, two 200W chargers', 'and if it were 24v'], /source: 24V 20A/],
      [['60W charger 4s 1500 how long', 'and the 100W one'], /charger: .*100W/],
      [['how long 6s 5000 at 5A', 'can you make that 10'], /6S 5000mAh.*current: 10A/],
      [['3s 1300 crashed today, looks ok', 'what amps'], /^current pack: 3S 1300mAh LiPo.*crashed go with care/],
      [['i put 1450 into a 1300'], /^percent .*back: 1450mAh.* do not charge/],
      [['charged 1700 into a 1500 pack, ok?'], /back: 1700mAh.* do not charge/],
      [['4s 1300 packs x8, charger 400W, 2 outputs'], /^plan packs: 8x .*chargers: 0\.1-20A by 0\.1 400W ports: 2/],
    ],
  ],
]

describe.each(talks)('%s', (_, cases) => {
  it.each(cases)('%j', async (turns, said) => {
    expect(await saidOf(turns)).toMatch(said)
  })
})
