// What is said of a danger that was told before: that it was another pack, that somebody looked again, that it is otherwise now.

import type { Danger } from '../../../charging/situation/dangers.ts'

/** Signs that hold whatever the danger. */
export const signs = {
  /** It was told of another pack. */
  otherPack: `was|were|meant|mean .3 another|different|other, not .2 this|that|the same .1 @pack|one, wrong .1 @pack|one,
    not .1 mine, isnt .2 mine, was .3 elses, mixed .3 @pack, mixed .2 up,
    not the|my @pack, it|that was the|my|his|her .2 that|which|who`,
  /** Somebody looked once more and did not only wish. */
  lookedAgain: `=looked|=checked|=inspected|=felt|=examined|=pressed .5 again|twice|properly|closely|carefully,
    again .2 =looked|=checked|=inspected|=felt|=examined|=pressed, double checked,
    =had|=took .2 second|another|closer look, looked .2 over again`,
  /** What a meter says ends what was told of volts, and nothing else. */
  measuredAgain: '=measured|=metered|=tested .5 again|twice|properly|myself, again .2 =measured|=metered|=tested',
  sound: `flat, firm, hard, sound, whole, intact, bone dry, never got, cool, fine, ok, okay, good, normal, healthy, clean,
    all right, alright, unharmed, undamaged, unhurt, nothing wrong, nothing .2 on it, as new, like new, # each, # on|in every|each|all, every|each .1 #, all #,
    its|is|at|are|reads|read .1 #`,
  mistaken: `mistake, mistaken, was wrong, i meant, i mean, misread, misspoke, typo, false alarm, got .2 wrong,
    take .2 back, confused, wrong one, sorry no, no sorry, after all`,
  /** What is said to have got better by itself was there, and still is. */
  recovered: `went down, gone down, going down, went away, gone away, goes away, went back, gone back, shrank, shrunk, settled,
    recovered, any more, anymore, no longer, flat|fine|ok|good|normal|firm again, by now, dried, came back, let .3 rest`,
  /** It only seems so. */
  seems: 'looks, seems, feels, appears, @it',
} as const

/** What ends a danger that passes, beside its denial. */
export const endings: Readonly<Partial<Record<Danger, string>>> = {
  unattended: `@me .3 @stays, @me .2 @minds, @grownUp|@someone .3 @stays, @grownUp .2 @minds, i .1 back, =im back, stay with,
    right beside, next to it, beside it, with it now, watch it, somebody|someone .3 stays|watches|sits, not .2 alone`,
  hotPack: '@cooled, cold, room temperature, ambient',
  coldPack: 'warm, warmed, room temperature, indoors, in the house, heated, #15-35 =degrees|=deg|=c|=celsius',
  softBed: '@hardPlace',
  burnsNear: '@hardPlace, moved .3 away|out|off, took .4 away|out|off, cleared, nothing .3 near, metre|meter .3 away',
  wayBlocked: 'moved .3 away|out|off|it, door .2 free|clear, way .3 free|clear, other side',
  movingVehicle: '@parkedUp, home now, at home',
  children:
    '@me .3 @stays, @me .3 @minds, in bed, asleep, gone home, moved .3 away, locked, adult, grown up, i .2 do it',
  medical: 'sober, fit, somebody else, someone else, @grownUp .2 does',
  exhaust: 'outside, outdoors, in the open, switched .2 off, engine .2 off, generator .2 off',
  mainsWet: 'dry, inside, indoors, under .2 roof',
  hotPlace: 'shade, inside, indoors, cool, fridge, house',
  sealedBox: 'open, lid .3 off|open, vented, holes',
  propeller:
    'prop|props|propeller|blades .4 off|removed, took .4 off|out, out of the .1 plane|model|quad, took it out, removed, unplugged, disconnected',
  badLead: 'new, another .2 lead|cable|wire, unrolled, unwound, replaced, thicker',
  noCharger: 'charger .3 between, use|used|using .3 charger, with .2 charger, through .2 charger',
  wrongCharger:
    'lipo charger, lithium charger, balance charger, right charger, proper charger, another charger, other charger',
  wrongMode:
    '@putRight, set .3 lipo|lihv|life|li-ion, lipo|lihv|life mode|program|programme, right mode|program|setting, changed .3 mode',
  wrongCount: '@putRight, set .3 right, right count, counted .2 again, # =s .2 now, changed .3 count',
  noBalance: 'balance .3 in|connected|plugged|on, plugged .3 balance',
  errorIgnored: 'error .3 gone|cleared, found .3 cause, plug .3 loose, fixed',
  crossedLeads: 'both .3 same|one, right .2 lead|plug, sorted, swapped .3 back',
  seriesCharge: 'apart, separate, unplugged, one by one, each .3 own|alone',
}
