// The plainest sentences of each danger: four a danger, and questions about dangers that tell none.

import type { WordedDanger } from '../../../src/charging/situation/dangers.ts'

export const plainDangers: Readonly<Record<WordedDanger, string>> = {
  fire: `my pack is smoking / there are flames coming out of the battery / it is hissing on the charger / the lipo caught fire`,
  injury: `I burned my hand on the pack / some of it got in my eye / I breathed in the smoke / I got a shock from the charger`,
  swollen: `it's puffed / my pack is swollen / the battery has bloated a bit / one of my lipos is puffy, can I charge it?`,
  pierced: `the pack is punctured / there is a dent in my lipo / the wrap and a cell are cut / it leaks`,
  wet: `the pack got wet / my lipo fell in the water / it was out in the rain and is soaked / the battery was under water, can I charge it?`,
  hotPack: `the pack is hot / it's still hot from the flight, can I charge it? / my lipo is too hot to hold / the battery gets very hot while it charges`,
  overfull: `I overcharged it / the cells were charged past full / it took 3000 mAh and the pack is a 2200 / the pack is overcharged`,
  homework: `I want to solder a new plug on the full pack / can I open the pack and take out a cell / I will build my own pack from old cells / I shorted the pack with a screwdriver`,
  bypass: `I bypassed the fuse / I removed the protection board / can I bridge the BMS / the fuse is bridged with wire`,
  revive: `how do I revive a dead lipo / can I wake up a pack that is at 0 V / I want to bring a dead lipo back with NiMH mode / I will jump start the dead lipo from a full one`,
  folkRemedy: `I put the swollen lipo in the freezer / salt water for the old lipo / can I press a puffed pack flat / I discharge it with a lamp because it is damaged`,
  noCharger: `can I charge without a charger / I connect the power supply straight to the pack / solar panel directly on the lipo / no charger, just 12 V from the car on the pack`,
  wrongCharger: `can I use a NiMH charger / charge the lipo with a phone charger / I use the charger of my drill for the lipo / lead acid charger for a 3S lipo?`,
  wrongMode: `charger is in LiHV mode and it's a normal lipo / I charge my LiFe in LiPo mode / the charger is set to NiMH for my lipo / I set LiPo, the pack is LiFe`,
  wrongCount: `the charger is set to 4S and the pack is 3S / I selected 3S for my 2S / charger says 6S but it is a 5S / set it to 3 cells, it's a 2 cell pack`,
  noBalance: `no balance lead / I charge without the balance lead / the balance plug is broken / balance lead not connected`,
  errorIgnored: `the charger shows an error and I ignore it / it keeps beeping an error, I just restart it / I turned the safety timer off / can I ignore the balance error`,
  tooFast: `can I charge at 10C / charge at 75C because the label says so / I charge my 4S 1300 at 20 A / full in 5 minutes, please`,
  keptApart: `I charge the puffed one next to the good ones / the damaged pack is beside the others / the crashed one charges with the others / I keep the swollen pack in the bag with the good packs`,
  boardMixed: `3S and 4S on one parallel board / LiPo and LiFe on the same board / a full and an empty pack in parallel / packs of different volts on one parallel board`,
  reversed: `I connected it the wrong way round / I plugged it in backwards / polarity was reversed / red on black, it sparked`,
  crossedLeads: `main lead of one pack and balance lead of the other / I mixed up the balance leads of two packs / the balance plug is from another pack / the main lead is of one pack, the balance lead of another`,
  seriesCharge: `two packs charged in series / the packs are still in series while charging / I charge both 3S joined in series / both chargers share one supply and the packs are in series`,
  badLead: `the lead is damaged / the cable gets hot / the wire is bare / the charge lead is melted`,
  mainsWet: `the socket is wet / the charger stands in the rain / the extension lead lies in the wet grass / the power strip got wet`,
  unknownPack: `the pack has no label / I don't know what battery it is / unknown lipo, no sticker / found a battery without label, charge?`,
  unattended: `nobody stays with it / I leave it alone / it charges overnight / I go to sleep while it charges`,
  movingVehicle: `I charge it while I drive / charging in the moving car / can I charge on the train / it charges in the car on the motorway`,
  softBed: `on the bed / it charges on my bed / I charge it on the sofa / the pack is on the carpet while charging`,
  burnsNear: `it charges next to petrol / there is paper next to the charger / charging beside the curtains / the charger is by the gas bottle`,
  wayBlocked: `the charger stands in the hallway / it charges in front of the only door / charging under the stairs, the only way out / the charger blocks the exit`,
  children: `my child is alone with it / the kids watch it while it charges / my 5 year old charges it by himself / the dog is alone with the charging pack`,
  medical: `I'm drunk / I had six beers and want to charge / I am too tired to stay awake / I'm stoned, charging a 3S`,
  exhaust: `the generator runs in the tent / the engine runs in the closed garage / generator inside the room / car engine on in the garage while I charge`,
  hotPlace: `full packs in a hot car / the lipo lies in the sun / it charges next to the heater / I leave it on the dashboard in the sun`,
  badTransport: `can I fly with a swollen lipo / I post a damaged lipo / a punctured pack in my suitcase / can I take a damaged battery on the plane`,
  propeller: `the propeller is on while I charge / props are on, pack is plugged in the plane and charging / I charge in the model with the prop on / prop still on the motor while it charges`,
  crashed: `the plane crashed / the pack was in a crash / I crashed the quad, can I charge the lipo / it fell off the table onto concrete`,
  tooLow: `one cell is at 2 V / the pack is at 1.5 V per cell / I left it connected and it is empty / the lipo was discharged too far`,
  coldPack: `the pack is frozen / it is minus 5 and the battery is cold / I charge at -10 degrees / the pack is ice cold`,
  storedFull: `it was stored full for a year / I left it full all winter / the lipo was left charged for months / stored empty for six months`,
  drainsSource: `the car battery is at 11.5 V and must still start / I drain the car battery till it is empty / car battery is nearly flat, charge more / I take everything out of the car battery`,
  leftOnCharger: `it has been on the charger for a week / I leave it on the charger all the time / still connected since Monday / the pack stays plugged in for days`,
  sealedBox: `I charge in a closed metal box / charging in an airtight box / the lid is shut while it charges in the ammo can / sealed tin, charging inside`,
  loose: `lipos loose with keys in my pocket / loose packs in a bag with coins / bare plugs in the toolbox / packs loose in the drawer with screws`,
  disposal: `can I throw it in the bin / I put the old lipo in the trash / old battery in the household rubbish / I bury the dead lipo in the garden`,
}

export const askedInGeneral = `
  how do I keep a lipo from swelling / how do I avoid mixing up the balance leads / what makes a lipo catch fire /
  why do packs puff up when they get old / how can I tell if a pack is swollen / why is a cold pack bad to charge /
  how do you prevent a wrong cell count / what happens inside when a cell is overcharged / against what does a balance lead protect /
  any tip so I never plug it in backwards / how do I know that a pack was hurt in a crash / what should I keep at hand in case one burns /
  why do i need the balance lead / why do i have to balance every time / why must we always stay with a charging pack / what does a puffed pack look like /
  what does the balance lead do in a charge that the main leads can't
`

export const countsApart = `
  I chose 4S on the charger, it's a 3S pack / charger says 6S but it is a 5S / chsoe 4S for my 3s pakc / my 6S on the 5S profile /
  went with 5S in the menu although it's 4S / display reads 4S, sticker reads 3S / ran my 2S under 3S settings / 5S selected, 6S connected /
  the white plug has five wires, so I set 5S / the display is at 22.2 V, on my pack is written 14.8 V
`
export const countsRight = `
  I chose 4S on the charger, it's a 4S pack / charger does 1S to 6S, I have a 3S 1300 / selected 3S on charger, the one before was 4S /
  I set 3S for my 3S and 4S for my 4S / put a 4S 1500 on my list, the 3S is already there / charger says 4S and the label too, a 3S is next /
  two 3S in series as 6S in the plane, charged apart at 2A each / I picked 3S on a 2S by mistake but corrected it to 2S before start /
  auto says 3S, label says 3S, so just press ok / four wires on the plug, so I set 3S / my pack says 11.1 V, charger shows 3S
`
