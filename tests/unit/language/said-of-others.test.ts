// What a word that sounds like a danger is said of: its twin of a pack, or of a charge, stays a danger.

import { describe, expect, it } from 'vitest'
import type { Danger } from '../../../src/charging/situation/dangers.ts'
import { dangersIn } from '../../../src/language/dangers/index.ts'

const told = (text: string): readonly Danger[] => dangersIn(text).told.map(({ danger }) => danger)

describe.each<[Danger, readonly string[], readonly string[]]>([
  [
    'hotPack',
    [
      'the charger is hot underneath, is that normal',
      'the bottom of the charger gets really hot, carry on? 4s 1500 lipo',
      'charger hot to the touch after an hour of 6s 5000 at 6 A',
      'is a hot charger dangerous? 4s 1500 lipo at 3 A',
      'my deans plug gets hot in full throttle',
      'esc was too hot to touch after the flight',
    ],
    [
      'the xt60 gets hot and the pack too',
      'the pack felt 45 degrees after the flight',
      'the pack on the charger is hot',
      'charger is warm and the pack is hot too',
      'my battery gets hot in the charger',
    ],
  ],
  [
    'movingVehicle',
    [
      'we came over on the ferry yesterday, how many amps for my 4s 1500 lipo',
      'after the boat crossing my packs read 3.8 each, 4s 1500 lipo, how long at 1.5',
      'after driving home the packs are at 12 degrees, charge them?',
      'taking lipos on the bus, what to do',
      'we carry a 1 kW generator in the car boot on trips, can it charge 6s 5000 lipo at 5 A',
    ],
    [
      'i charge in the boot while we drive, 4s 1500 lipo how long',
      'on the train with two 4s, plugged in at the seat',
      'came by train, packs charged on the way, 4s 1500 amps',
      'sledge is behind the snow scooter, pack charges in the sledge, my brother pulls it over the lake',
      'drove home with the charger running, 4s 1500 how long',
      'the bus home has sockets, charger on the fold table. 3S 2200 w/ 1A, full before I get off?',
    ],
  ],
  [
    'badLead',
    ['charger gets really hot at 20 A'],
    ['the lead gets really hot at 20 A', 'wire from the charger gets hot at 20 A'],
  ],
  [
    'wet',
    [
      'i spilled tea on the charger',
      'my power supply got wet in the rain',
      'my lipo bag went through the wash',
      'charge in the rain under a roof',
    ],
    [
      'i charged in the rain and the pack got wet',
      'i spilled tea on the pack',
      'charger got wet in the rain and the lipo too',
    ],
  ],
  [
    'mainsWet',
    ['i spilled tea on the table', 'charger stayed dry, it only rained on the grill'],
    [
      'i spilled tea on the charger',
      'my power supply got wet in the rain',
      'can i charge in the rain',
      'charging in the bathtub, dry',
    ],
  ],
  [
    'pierced',
    [
      'the label is torn',
      'scratched sticker on my 4s 1500',
      'can i drill a hole in the lipo box',
      'the label of my battery is torn, i close it with tape',
      'the strap has a cut, battery strap i mean',
    ],
    [
      'sticker torn, pack has a cut',
      'the label is torn and so is the foil',
      'can i drill a hole in the lipo',
      'hole in the lipo bag and in the pack',
    ],
  ],
  [
    'fire',
    [
      'will it explode if i charge it in the kitchen',
      'can a lipo just burn in its box',
      'my esc smoked yesterday, charge the pack',
    ],
    [
      'my esc is smoking',
      'the pack smoked yesterday',
      'my pack smokes, will it explode',
      'it might be burning inside, it smells sweet',
    ],
  ],
  [
    'unknownPack',
    ['used 1850 mAh of my 3S 2700 lipo in 5 min'],
    ['used 3S 2300 from ebay, 1850 mah, amps', 'bought used, used 1850 of it', 'used 2300 lipo 3s off a mate, amps'],
  ],
  [
    'injury',
    ['25 A through an XT60 and an XT30, which one do i burn my fingers on', 'can i burn myself on a 30 A lead'],
    ['i burned my fingers on the plug', 'my fingers burn from it', 'burnt my hand, will it burn again'],
  ],
  [
    'noCharger',
    ['hang a 12 V led strip straight on a full 3S 2200', 'lamp straight onto my 3s 2200 lipo in the tent'],
    [
      'hang the supply straight on my 3S 2200',
      'connect my 3s lipo to the mains through a light bulb',
      'charge my 3s 2200 straight from the car battery, with a bulb',
    ],
  ],
  [
    'reversed',
    ['the connector sparked when i plugged it in'],
    ['it sparked when i plugged it in, red was on black', 'sparks on plugging in, i had turned the plug'],
  ],
  [
    'unattended',
    [
      'how close must i sit',
      'may i leave the house with packs in storage',
      'how do i get at the workshop charger',
      'who has the key of the office charger',
      'the display keeps charging at 12.6',
    ],
    [
      'what amps for a 3s 2200, and can i leave the room',
      'may we leave the house while it charges',
      'i get on at the office, the charger runs',
      'it charges while i watch tv in the next room',
    ],
  ],
  [
    'tooFast',
    [
      'its 33C here, does that matter',
      'is it bad to fly at 35C weather',
      'charge the 4s 1500 at 33C outside',
      'may i take 6 x 4s 1500 on a plane',
    ],
    ['charge it at 33C today', 'charge the 4s 1500 at 33C', 'label says 30C so i put 40 A into the 1300'],
  ],
  [
    'revive',
    ['plugged my battery backwards for a second, nothing happened'],
    ['i clip the dead pack for a second to a good one so the charger sees it'],
  ],
  [
    'coldPack',
    ['the fridge is next to the charger'],
    ['can i charge right out of the fridge', 'from the fridge straight on charge'],
  ],
  ['noBalance', ['the xt60 is gold plated'], ['charge with xt60 only']],
  ['homework', ['i changed the connector of the esc'], ['i changed the connector of the pack']],
  [
    'storedFull',
    [
      'how long can a pack stay full',
      'for how many days can i leave lipos fully charged',
      'what should my 4s read when i put it away until spring',
    ],
    ['i left my pack fully charged all winter', 'how long can it stay full, it has been so since march'],
  ],
  [
    'overfull',
    [
      "it shows 25.2 V and still says charging, isn't it finished",
      'screen says 16.8 and 0.1 A still flows, normal?',
      'it reads 8.4 and goes on charging',
    ],
    [
      'my 3s shows 16.8 and still charges',
      'it has been at 16.8 for hours and still takes more, 2000 mah went into the 1500',
    ],
  ],
  [
    'wrongMode',
    ['end voltage of 3s li-ion for longer life', 'lipo mode, to extend its life'],
    ['lipo mode for my 2s 1300 life', 'the pack is life and the program is lipo'],
  ],
  [
    'exhaust',
    ['i drive to the field with a generator in the boot, how many 4s 1500 lipo does 1000 W feed'],
    ['generator runs in the boot while i charge 4s 1500', 'generator in the boot is on, 4s 1500 how long'],
  ],
  [
    'boardMixed',
    [
      'all eight the same 1s 300 lihv, charge them together on the board?',
      'they are identical 4s 1500 lipo, can i charge both together',
      'i connect 2 packs 3s with a y cable to charge at once',
    ],
    [
      'i connect 2 packs 3s with a y cable, one is full',
      'parallel 3s and 4s, yes or no',
      'board with two 3s 1300, one at 3.85 and one flown down to 3.5',
      'all the same but one is full, 6 3s 850 on the board',
      'both on the same board, a 3s 850 and a 4s 850',
      'one full and one empty 3s 850 on the board together?',
    ],
  ],
  [
    'tooLow',
    ['the label reads 1,300, 4s lipo, how many amps', '12 V feed, 15 A, 5 m lead, drop at most 0.5 V'],
    ['one cell of my 4s 1500 reads 1,3 V', 'left goggles on all night, battery reads 4.1 V 2s'],
  ],
])('%s', (danger, harmless, harmful) => {
  it.each(harmless)('is not told by "%s"', text => expect(told(text)).not.toContain(danger))
  it.each(harmful)('is told by "%s"', text => expect(told(text)).toContain(danger))
})

it.each([
  'two chargers share one 12 V 100 Ah agm, how many 4s 1500 lipo',
  'took the train to the club, 3s 850 lihv at 0.8 A',
])('nothing of the kind is suspected in "%s"', text =>
  expect(dangersIn(text).suspected.filter(one => one === 'seriesCharge' || one === 'movingVehicle')).toEqual([]),
)

describe('what somebody asks how never to do', () => {
  it.each([
    'how do i make sure i never put my 3S 2300 lipo on nimh mode by accident',
    'what can i do to be sure nobody ever leaves a charge alone',
  ])('is not told: "%s"', text => expect(dangersIn(text)).toEqual({ told: [], suspected: [] }))
  it.each<[Danger, string]>([
    ['noBalance', 'how do i charge it without the balance lead'],
    ['unattended', 'how can i charge overnight without burning the house down'],
    ['bypass', 'how do i bypass the bms without damaging the cells'],
    ['wrongMode', 'i put my 3S 2300 lipo on nimh mode. how do i make sure i never do that'],
  ])('is not what they want to do: %s in "%s"', (danger, text) => expect(told(text)).toContain(danger))
})

describe('rooms', () => {
  it.each(['6s 1300 lipo charging in the kids bedroom, how many amps', 'i charge next to the cot, 4s 1500'])(
    'of children are no place for a charge: "%s"',
    text => expect(told(text)).toContain('children'),
  )
  it.each([
    'never charge in the kids room, so where? 4s 1500',
    'packs are stored in the kids room, 4s 1500 storage',
    'my room mate charges 3s 2200 in the living room at 2 A',
  ])('tell nothing of children: "%s"', text => expect(told(text)).not.toContain('children'))
  it('where people sleep: somebody may be asleep', () => {
    expect(dangersIn('charging in the bedroom, 3s 2200 lipo how long').suspected).toContain('unattended')
  })
})

it.each<[Danger, string]>([
  ['unattended', 'my brother stays at the bench asleep in his chair, 3S 2300 lipo amps'],
  ['unattended', 'no hurry, let it have all night, 3S 2300 lipo'],
  ['unattended', 'ta, setting it off now and nipping over to the salon, back at 5'],
  ['movingVehicle', 'the train goes in half an hour and i charge on it, 3S 1350 lipo'],
])('%s is told by "%s"', (danger, text) => expect(told(text)).toContain(danger))
it.each([
  'i sit next to it while the dog is sleeping, 3S 2300 lipo',
  'never let it have all night, so how long, 3S 2300 lipo',
  'the train goes in half an hour, can i charge before that, 3S 1350 lipo',
])('nothing of that is told by "%s"', text =>
  expect(told(text).filter(one => one === 'unattended' || one === 'movingVehicle')).toEqual([]),
)

describe('who keeps a charge', () => {
  it.each(['my son is 9, he charges his 2s 450 alone in his room', 'charging alone is what my daughter does, 1s 300'])(
    'no child alone: "%s"',
    text => expect(told(text)).toContain('children'),
  )
  it.each(['my daughter never charges alone, 2s 450 amps', 'he is 12 and charges 2s 450 alone with me beside him'])(
    'a child that an adult is with: "%s"',
    text => expect(told(text)).not.toContain('children'),
  )
  it('an adult who watches is somebody', () => {
    const watched = dangersIn('wife is home, she watches the charger, i am at work')
    expect([watched.told, watched.suspected]).toEqual([[], ['unattended']])
    expect(told('wife watches the charger until she goes to bed, i am at work')).toContain('unattended')
  })
})

it.each<[Danger, string]>([
  ['overfull', 'the old 4s 2200 lipo took 2600 at the last charge, can i charge again'],
  ['hotPack', 'my 2s 450 lihv is a bit warm after flying'],
])('%s is suspected in "%s"', (danger, text) => expect(dangersIn(text).suspected).toContain(danger))

it.each([
  'label is gone off this 4S 1300, might be HV, might be the ordinary sort, i set 4.35',
  'it may be lipo or lihv, 3S 1300',
])('of two types that it may be none is known: "%s"', text => expect(told(text)).toContain('unknownPack'))

it('a cell that reads nothing is too low, whose it may be', () => {
  expect(told('one cell of my 6s 1300 reads 0')).toContain('tooLow')
})

it.each<[Danger, string, boolean]>([
  ['mainsWet', 'i want to charge on the balcony, it rains a bit', true],
  ['mainsWet', 'it rains, i charge in the garage, 4s 1500 lipo how long', false],
  ['mainsWet', 'feeling right as rain, may as well charge for Saturday. 2200 3S?', false],
  ['children', 'charging at the kitchen table with kids around, 4s 850 lihv', true],
  ['children', 'for a child, better own four 1S 150, if i think of the standing around at the charger', false],
  ['burnsNear', 'ok to charge 4s 1500 beside 20 other full packs', true],
  ['burnsNear', 'charging in the garage next to the motorbike', true],
  ['burnsNear', 'i charge from the car, 4s 1500 lipo how many', false],
])('%s in "%s": %s', (danger, text, isOpen) => expect(dangersIn(text).suspected.includes(danger)).toBe(isOpen))
it('a charge in a car that is driven moves, whatever stands near it', () => {
  expect(told('i charge in the car while my wife drives, charger near the petrol can, 4s 1500 how long')).toContain(
    'movingVehicle',
  )
})

it.each([
  'bag stood in the hall all night and its warm, 2S 450 at .45 how long',
  'will 2.5 square millimetres do in that lead for 4.5 amperes, or does it get warm',
  'power bank says 20000 mah. how many 2s 450 lipo is that',
  'my two boys have gone up to the shop with their mother whilst their grandfather stands the afternoon watch over the charger alone',
])('nothing hot, overfull or of children is heard in "%s"', text => {
  const { told: found, suspected } = dangersIn(text)
  const all = [...found.map(({ danger }) => danger), ...suspected]
  expect(all.filter(danger => ['hotPack', 'overfull', 'children'].includes(danger))).toEqual([])
})
