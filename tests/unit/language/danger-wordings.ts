// Wordings of dangers, as clauses that may stand before, amid or behind an ordinary question.

import type { Danger, WordedDanger } from '../../../src/charging/situation/dangers.ts'

const wordings = {
  unattended: `I'm nipping over to the butcher's while it cooks
    I shall be in the shower meanwhile
    we are having dinner at the Italian place until it beeps
    I'm dead to the world by eleven and it keeps going
    nobody will be in the flat till six
    I leave it charging and drive to the office
    I just pop round to my sister's for half an hour
    I'll be asleep by then
    it runs through the night
    I have choir practice from seven to nine so it gets on with it alone
    I'm walking the dog meanwhile
    the hut is locked and empty until I come back from lunch
    I watch it on the webcam from work
    it can carry on by itself while I'm at the gym
    I go out shopping and it stops on its own
    I put it on before I go to sleep
    it stays plugged in until morning
    I've got a train to catch so nobody is with it
    I'm off swimming for an hour
    I leave the house at eight and it keeps charging`,
  movingVehicle: `we charge while we're on the motorway
    it charges in the boot during the drive
    my husband drives and I charge on my knees
    it is on the charger while the bus takes us to the field
    I want to charge it on the ferry
    the charger runs in the back as we drive home
    it's hooked to the lighter socket while I'm driving
    charging on the train back
    it charges under way in the camper
    the charger is going in the trunk for the two hour journey
    I'm at the wheel and the charger is on the passenger seat working away
    we top them up on the road
    it gets charged on the boat while we sail
    charging during the car ride
    it's charging as we roll down the autobahn
    I charge them en route from the car socket`,
  softBed: `it sits on the duvet
    the charger is on the couch
    it's lying on my pillow
    it charges on the carpet
    I've put it on a folded blanket
    it's on the bed beside me
    it's under a cushion so the light doesn't bother me
    it's lying on the back seat
    the pack is wrapped in a towel while it charges
    it rests on the mattress
    I charge it on the armchair
    it's on the rug in front of the telly
    everything is laid out on the sofa
    the pack is in my sleeping bag with the charger
    it's on the settee next to the cat's cushion
    the charger stands on a pile of clothes`,
  burnsNear: `the charger stands next to the petrol can
    it's beside a stack of newspapers
    the curtain hangs over the charger
    it's on a hay bale
    there's a gas bottle right by it
    it charges in a wooden shed
    the table is full of cardboard boxes and it's between them
    it sits among the straw
    white spirit and thinners are on the same shelf
    it's on top of a pile of old magazines
    the charger is under the net curtains
    it's next to the camping gas
    there's sawdust all round it on the bench
    it's close to the jerrycan
    the rest of the packs are piled up right beside it
    it stands between the paint tins`,
  children: `my toddler is alone in the room with it
    the kids are watching it for me
    our dog is lying next to the charger with nobody else there
    my six year old keeps an eye on it
    the children are by themselves in there
    the cat sleeps on top of the charger
    my grandson looks after it while I cook
    the little ones are playing round the charger
    my nephew of eight minds it
    the puppy has the room to itself with the charger
    my daughter, 5, sits with it on her own
    only the kids are home with it
    the baby crawls about next to it
    the juniors look after the table by themselves
    the kitten plays with the leads while it charges
    the boys are in charge of it until I'm back`,
  wayBlocked: `it's charging right in front of the only door
    the charger is in the stairwell
    it stands in the hallway by the front door
    it blocks the way out
    it's on the stairs
    the table stands across the exit
    it's charging under the stairs
    there is no other exit than past the charger
    it's in the corridor, the only way out of the flat
    it's right at the caravan door
    I charge in the entrance
    you have to climb over it to get out
    it's on the landing at the top of the stairs
    it sits in the porch, the only door
    the charging bench blocks the fire exit
    it's on the floor in the doorway`,
  swollen: `it has puffed up a bit
    it's slightly swollen
    it's gone fat in the middle
    it looks like a little balloon
    there's a bulge on one side
    it's become round like a cushion
    it has bloated since the summer
    the pouch feels spongy and full of gas
    it doesn't fit in the battery tray any more since it got thicker
    it's a bit podgy
    it has a small belly
    it won't lie flat, it's rounder than it was
    the sides are bulging
    it is ballooning a little
    it swelled up after the last flight
    it's puffy but still flies
    one cell is inflated
    it has grown two millimetres thicker`,
  pierced: `there's a small hole in the foil
    it has a dent in the corner
    one corner is crushed
    the wrapper is torn and I can see silver
    the prop nicked the pack
    it got punctured by a screw
    a cell is cut open at the edge
    I trod on it and it's bent
    the dog chewed the pack
    there's a gash in the side of the battery
    it leaks something at the seam
    the pouch is pierced
    a nail went through the corner
    there's a tear in the cell
    it got squashed in the door
    the casing is cracked
    I scratched through the foil with a knife`,
  crashed: `it just came out of a crash
    the plane went in nose first with it
    I flew it into a tree an hour ago
    it fell off the roof
    it dropped down the stairs
    the quad hit a wall with it at full speed
    it smashed into the fence this morning
    I planted the glider with it in the turf
    it was in the model when it hit the ground
    we crashed it ten minutes ago
    it was thrown out of the plane on impact
    the wing folded and it came down hard from fifty metres
    it tumbled off the bench onto the concrete
    I dropped it on the floor
    it slammed into the runway
    it flew into a lamp post`,
  wet: `it fell into the lake
    it got soaked in the rain
    it went through the washing machine
    the model landed in a pond with it
    it's still damp
    I spilled coffee over the pack
    it was under water for a minute
    it sat in a puddle
    the bag was full of water
    it got rained on
    it's been in the river but I dried it
    it took a swim in the sea
    it lay out in the wet grass all night
    a wave splashed over it
    I pulled it out of the stream
    it was drenched but it's dry now`,
  hotPack: `it's still hot from the flight
    I can't keep my hand on it
    it's just landed and is very warm
    it's burning hot
    it comes straight out of the plane, hot as a potato
    it shows 55 degrees on the thermometer
    it gets hot while charging
    it feels feverish
    it's too hot to hold
    it's roasting
    it lay in a hot car and is hot now
    it's overheating
    the pack is boiling
    it's still warm from the last heat
    it got really hot on the radiator
    it hasn't cooled down yet`,
  coldPack: `it was in the freezing car all night
    it's ice cold
    it's frozen
    it spent the night outside at minus 5
    there's frost on it
    it is below zero where I charge
    it comes from the unheated garage at -8
    it's minus ten in the shed where the pack was
    the pack lay in the snow
    it slept in the van at minus 3
    I charge at -4 degrees
    it's as cold as ice
    it was left in the boot during the frost
    I just brought it in from the icy balcony
    it feels frozen to the touch
    it's freezing cold, straight from the shed`,
  tooLow: `one cell reads 1.8 V
    it's down to 2.1 volts per cell
    it's deeply discharged
    I forgot to unplug it and it's dead
    it's over-discharged
    the charger refuses it because it's too low
    it's completely dead
    I left it connected in the model all week
    cell two shows 0.9 V
    it was run into the ground
    it ran down to nothing over the weekend
    it reads 2.2V a cell
    the switch was left on for three days
    the voltage sank below 2.4 per cell
    it's stone dead
    there's no sign of life in it`,
  revive: `I want to wake it up with NiMH mode
    I'd like to bring it back to life
    can I revive it
    a few pulses to kick it awake
    I jump start it with another pack
    it gets ten minutes of nicad mode until the charger takes it
    I'd resurrect it slowly
    how do I get it back from the dead
    I zap it to get it going
    I give it a jolt with a 12V supply to wake it
    can it be rescued with a trickle
    let me coax it back above three volts
    I fool the charger with nimh mode first
    maybe a little kick start helps
    I want to recover it with a slow charge in nimh
    I shock it back to life`,
  overfull: `it's overcharged
    it has taken 2600 and the label says 2200, still going
    1700 mAh went into my 1300 and it keeps going
    it's at 4.25 per cell
    it went above 4.2
    it got overcharged
    I go to 4.28 V for more punch
    more has gone in than is on the label
    it's over full
    it sits at 4.3 volts a cell though it's plain lipo
    the charger pushed 1900 into a 1500 and carries on
    it charged past full
    it's way above full
    I overcharge it a little
    the cells stand at 4.27
    it took more than its label and won't stop`,
  storedFull: `it has been full since Easter
    it lay fully charged for two months
    I keep them full all winter
    it sat at 4.2 since September
    they've been charged up for six weeks
    it's been full for months
    they stay full until spring
    I store them fully charged
    it was full in the drawer all summer
    I filled it in August and never flew
    it has stood at 100% since the last meeting in October
    they sit fully charged from one season to the next
    it was left full over Christmas
    full for half a year now
    it waited full in the box since March
    they've sat charged for weeks`,
  unknownPack: `there's no label on it
    I found it in a drawer and don't know what it is
    the sticker came off
    I bought it used at a flea market
    it's second hand from a stranger
    I don't know the chemistry
    nothing is written on it
    the label is unreadable
    no idea how many mAh it has
    it came without markings from a friend
    it's an unmarked pack
    I got it off the internet used
    I don't know if it's lipo or lihv
    the print is rubbed off
    it's a mystery battery
    somebody gave me a nameless pack`,
  wrongCharger: `I use my old nimh charger
    on the charger of a toy car
    with a car battery charger
    I've only got a lead-acid charger
    the phone charger does it
    it hangs on my drill charger
    with the charger from my e-scooter
    using a nicad wall charger
    the charger is for NiMH only
    with my laptop charger
    on the mower's charger
    I put it on the ebike charger
    with a motorbike battery charger
    the charger says nicd on it
    with the trickle charger from the motorcycle
    off a cordless drill charger`,
  noCharger: `I hook it straight to the bench supply
    directly on a car battery
    without a charger, just the power supply
    I connect the solar panel directly to the pack
    with crocodile clips from the 12V battery straight onto the pack
    I charge it from a lab supply set to 12.6
    the panel goes right on the battery leads
    I don't have a charger so I use a wall wart with clips
    straight from the power supply
    I skip the charger and use the psu
    no charger, only a 12 V adapter
    from the solar panel with nothing in between
    I wire the pack to the car battery
    the bench psu is clipped onto the pack
    direct from a laptop brick to the pack
    I let the supply do it without any charger`,
  wrongMode: `it's a LiFe but I run it in LiPo mode
    the charger is on lihv for my plain lipo
    I charge the lipo with the nimh program
    the menu is set to LiFe though the pack is lipo
    in the wrong mode
    I use the lihv setting on a normal lipo
    on the lead acid program
    the program is for li-ion but it's a LiFe pack
    I selected the wrong chemistry
    the lipo runs on the hv program
    I charge a lipo to 4.35
    it's in nicad mode
    I put the life pack on the lipo program
    LiPo pack, LiHV mode
    the wrong program is on
    the charger stands on lihv and the pack is an ordinary lipo`,
  wrongCount: `I told the charger it's a 4S but the pack is a 3S
    the charger sees 3S, the pack is a 4S
    the cell count is set wrong
    the menu says 5S for my 4S pack
    I set the charger to 4S for the 3S lipo
    the display shows 2S and it's a 3S pack
    I entered the wrong number of cells
    it thinks my 6S is a 5S and I let it
    I selected 3S by hand for a 2S pack
    the charger counts four cells on my 3S pack
    I left the charger on 6S for the 4S lipo
    wrong cell count in the menu
    it detected 3S for the 4S pack and I pressed on
    I chose 4S because 3S wouldn't start, it's a 3S pack
    my 4S pack runs as a 3S on the charger
    I tell it 2S though the pack has 3S`,
  noBalance: `without the balance lead
    the balance plug is torn off
    I leave the balance lead off
    only the main lead is connected
    the small white plug is broken
    I don't plug in the balancer
    one balance wire has come off
    just over the two thick wires
    the balance connector doesn't fit so I skip it
    the white plug stays out
    the balance wires got ripped out
    I charge by the main plug only
    a pin of the balance plug is missing
    the little plug with the thin wires is gone
    no balance lead
    it has lost its balance connector`,
  bypass: `I bridged the BMS
    the fuse is bridged with wire
    I bypassed the protection board
    I wrapped the fuse in tin foil
    I put in a bigger fuse because the old one kept blowing
    the bms is cut out of the circuit
    I jumpered the protection circuit
    there is a nail instead of the fuse
    I removed the protection board
    a wire goes across the bms
    I took the pcb off because it kept cutting out
    the fuse kept blowing so I put a 30A in
    I shorted out the protection
    I linked out the bms
    the protection is bypassed
    I replaced the fuse with a piece of wire`,
  errorIgnored: `the charger shows an error but I press start again
    I ignore the warning
    I turned off the safety timer
    it stops with an error and I just restart it
    it beeps and I carry on regardless
    I disabled the capacity limit
    I overrode the alarm
    I clicked the error away
    it says connection break and I press continue
    I muted the alarm and let it run
    the safety timer is disabled
    it keeps stopping and I keep starting it again
    it complains about a cell but I pressed OK
    I switched off the temperature cut
    I keep pressing start until it stops complaining
    it refused and I forced it`,
  keptApart: `it crashed and goes on the board with the others
    the crashed one is charged on the board beside the other two
    it hit a tree and now sits on the board with the others
    one of the packs on the board crashed this morning
    the crashed pack lies with the others
    it fell off the roof and charges next to the others
    it smashed into a wall and shares the board
    the one from the crash is on the parallel board too
    it went in nose first, now it is on the board with the rest
    I put the crashed pack on the board together with two good ones
    it came down hard and waits with the others on the board
    the pack from the crash goes on the same board as the others`,
  boardMixed: `one on the board is full and the others are empty
    I put a 3S and a 4S on the board together
    on the board are packs at 3.7 and 4.1 volts
    lipo and lihv together on the board
    they will even out on the board by themselves
    one on the parallel board is puffed
    I mix different chemistries on one board
    on the board one is at 3.9 and the other at 3.6
    one reads 11.1 and the other 12.4, both 3S on the parallel board
    a flown one and a full one share the board
    they equalise among themselves on the board
    I plug a LiFe and a LiPo into the parallel board together
    one of the four on the board is at 4.15, the rest at 3.75
    different voltages on the board, they'll sort it out among themselves
    the board has two 2S and one 3S together on it
    two packs in parallel, one at 30% and the other at 80%`,
  tooFast: `I charge at 10C
    it should be full in five minutes
    the label says 60C so I charge with 60C
    I give it 30 A for a 3S 1300
    at 20C
    I want it done in 6 minutes
    I charge at the discharge rate on the label
    I use the C number on the label for charging
    it says 75C so I set 40 amps on the 1500 mAh
    fully charged in three minutes
    I go with 12C
    I take the 45C from the sticker as charge rate
    the charger gives all of its 40 A into a 4S 1000
    as fast as the label's 50C allows
    I put 20 A into a 2S 450 mAh
    charge rate 15C`,
  drainsSource: `from the car's starter battery with the engine off
    I run the car battery flat
    until the battery is empty
    off the starter battery
    the car may not start afterwards but never mind
    the van battery with the engine off all afternoon
    I drain the car battery to the last drop
    it's the only battery of the car and the engine is off
    I take the leisure battery right down to zero
    the source is at 11.2 V already
    we have jump leads if it's flat
    down to nothing from the lead battery
    engine off, from under the bonnet
    from the car battery with the ignition off
    it doesn't matter if the car battery is flat tomorrow
    I keep going until the starter battery is dead`,
  exhaust: `the generator runs inside the tent
    the genny is in the garage with the door shut
    the engine idles in the shed
    the generator stands in the awning
    we took the generator into the marquee because of the rain
    the generator is running in the van with us
    I run the car engine in the closed garage
    the generator is indoors
    the petrol generator is in the caravan
    the genny hums in the barn beside us
    our generator is in the hut with the window open
    I let the engine run in the garage
    the generator runs in the cellar
    the genset is in the porch
    the generator is under the gazebo with the sides down
    the generator is inside with us`,
  homework: `I'm soldering a new plug onto the pack
    I cut both wires at once
    I replace one cell myself
    I opened the pack up
    I solder on the cells
    I shrink it with a heat gun on the pack
    I swap the bad cell for one from another pack
    I snip the old connector off the battery
    I shorted it by accident with the cutters
    I take the pack apart
    I build a pack from laptop cells
    I resolder the tab on cell three
    I cut the dead cell out
    I desolder the wires from the pack
    I'm changing the connector on the lipo tonight with my iron
    I put a new cell into the pack`,
  badLead: `the extension is still rolled up on the reel
    the lead gets hot
    the cable is damaged and you see copper
    I use thin speaker wire
    I twisted the wires together with tape
    the plugs are bare and I connect the pack first
    the lead is frayed
    bell wire does for the lead
    the cable drum is not unrolled
    the plug gets very warm
    the insulation of the cable is gone
    the cable is coiled up under the table
    I made an adapter from an old lamp cord
    the cable got shut in the door and is crushed
    the charge lead melts a bit
    I use the reel without unwinding it`,
  crossedLeads: `the main lead of one pack and the balance lead of the other
    I have the balance plug of pack A with the main plug of pack B
    the main lead is from the red one and the balance lead from the blue one
    I crossed the leads of the two packs
    balance from one pack, main from the other
    main plug from the left and balance plug from the right pack
    I mixed up the balance leads of the two packs
    the balance leads of the two are swapped
    the white plug is from another pack than the main one
    the balance lead belongs to the other pack
    main lead off one and balance off its neighbour
    I connected the balance lead of the wrong pack
    the thick wires from one and the white plug from the other
    main of the first with balance of the second
    the balance plug in there is from a different pack than the main lead
    the leads of both packs are crossed`,
  seriesCharge: `the two packs are still in series
    I leave the series plug in
    both packs joined in series, a charger on each
    with the series harness still on
    two chargers on one psu and the packs still connected in series
    the series lead is still plugged
    I charge them in series as one 6S
    the packs stay linked in series
    both halves are still wired in series
    they hang together in series on two chargers
    still in their series adapter
    one charger on each half while they are in series
    I don't unplug the series connector
    the pair is still joined in series
    in the series loom with one charger each
    the two chargers share a ground and the packs are in series`,
  reversed: `I plugged it in the wrong way round
    red went to black and there was a spark
    I swapped plus and minus
    the polarity was reversed
    I connected it with reverse polarity
    plus on minus with a bang
    the plug was the wrong way round for a second
    I mixed up red and black
    it sparked when I put it in backwards
    positive to negative by mistake
    black on red, big flash
    I forced the plug in the other way round
    the adapter has plus and minus swapped
    I had it in back to front
    it went in the wrong way and flashed
    I reversed the leads`,
  mainsWet: `the mains supply stands in the rain
    the extension lead lies in the wet grass
    the power supply is out in the drizzle
    the psu has dew on it
    the socket strip is in a puddle
    I charge in the bathroom next to the bath
    rain drips on the plug
    the mains brick got wet
    the supply is on the grass with the dew
    the 230V cable lies in the mud and rain
    the power strip is lying in the snow
    the mains socket is outside in the rain
    the extension is in the wet
    the power supply stands on the lawn in the drizzle
    the mains plug lies in water
    the socket is dripping from the rain`,
  propeller: `the propeller is still on
    it stays in the plane with the prop on
    I charge it in the model, armed
    with the blades on and the esc plugged in
    it charges inside the quad with props on
    the props are still on the drone
    it's in the aircraft with the prop fitted
    the pack is in the plane and the motor is live
    prop on, in the cradle
    it stays plugged into the esc with the propeller on
    charging in the heli with the rotor blades on
    the model is armed while it charges
    the propeller stays on while charging
    the prop is mounted and the pack is in the plane
    in the plane with the propeller attached
    I don't take the prop off`,
  leftOnCharger: `it's been sitting on the charger since Monday
    it lives on the charger
    I leave it on the charger for days when it's full
    it hung on the charger all week
    it stays on trickle until the weekend
    it was left on the charger for a week
    it's full and still on the charger since Friday
    I forgot it on the charger for three days
    it's permanently on the charger
    I keep it on the charger so it's always ready
    it has been plugged in for days
    it stayed on the board since last Sunday
    it remains on the charger until I need it
    it's on float all winter
    it's been on charge since the weekend
    the full pack stays on the charger overnight`,
  hotPlace: `the full packs are in the hot car
    they lie charged on the dashboard in the sun
    I leave the full ones in the sun
    they wait fully charged in the parked car, it's 35 degrees
    full packs in the boot in the heat
    they are charged and in the van in full sun
    the full packs lie on the parcel shelf
    they're full in the greenhouse
    the charged packs sit behind the windscreen
    full, in the car, in summer heat
    they stay full in the hot tent
    the charged lipos are in the car in the blazing sun
    they bake in the car, fully charged
    I keep the full packs on the sunny windowsill
    fully charged in the caravan at 40 degrees
    full ones in the sun all day`,
  sealedBox: `they're in an airtight box
    it's in an ammo tin with the lid clamped
    I keep it in a biscuit tin with the lid shut
    in a sealed metal box
    in a steel box with a rubber gasket
    in a jam jar with the lid on
    it charges in a closed tin
    they are in a locked steel cash box
    the lid is taped down on the cookie tin
    in a waterproof case, sealed
    in a lunch box with the lid on tight
    shut in a metal toolbox
    I store it in an ammunition box with the seal
    in a screw top jar
    in a watertight box
    in a closed ammo can`,
  loose: `loose in my bag with my keys
    in my pocket with some coins
    with the screwdrivers in the toolbox
    loose in the rucksack with no caps on the plugs
    together with nails and screws in a box
    in the handbag next to my keys
    the plugs are uncovered in the bag
    in the drawer among loose screws
    they rattle around in the tool bag
    with coins in my jacket
    in the glovebox with spanners
    loose with the allen keys
    in a bag with bare plugs
    the packs lie loose in the bag with the tools
    between pliers and screws
    uncapped in my backpack with a bunch of keys`,
  folkRemedy: `I put it in salt water
    in a bag of rice
    I put it in the freezer for the night
    I pressed it flat in a vice
    I let the gas out with a needle
    I poked a hole and taped it
    in the oven to warm it
    clamped between two boards
    I warm it with a hair dryer
    I squeeze it flat under books
    I glued the hole shut
    a bucket of salt water
    I prick it and put tape over
    in the microwave
    a bulb to drain it and then the freezer
    I stuck tape over the cut`,
  badTransport: `it goes in the suitcase I check in
    I post the damaged one
    the swollen one flies with me
    I send the punctured pack by parcel
    it goes in the hold luggage
    in my checked bag
    I drive the puffed pack to the shop in the car
    I mail the broken pack back
    it's in the checked suitcase
    the damaged pack goes back by post
    I take the swollen pack on the plane
    it goes in the hold
    the dented one is shipped to the dealer
    in the big case that I hand in at the airport
    I bring the leaking one on the bus
    the crushed pack goes off with the courier`,
  fire: `it's smoking
    there are flames
    it hisses
    it smells of nail varnish
    there's white smoke coming out
    it's on fire
    I hear a hissing noise from the pack
    it smells burnt
    it's popping and crackling
    there's a sweet smell
    it caught fire
    a thin stream of smoke comes from the charger
    it sizzles
    it smells like solvent
    it is burning
    it's venting`,
  injury: `I got some of the liquid in my eye
    my fingers are burnt
    the electrolyte is on my skin
    I got an electric shock
    I breathed in the smoke
    my hand stings
    it squirted on my face
    I burned my hand on it
    my eyes are watering and my throat is sore
    the acid got on my arm
    I got a shock from the mains
    my thumb has a blister from it
    some juice of the battery got on my hands
    my skin is red and itches where it leaked on me
    I inhaled the fumes and feel dizzy
    it burns on my skin`,
  disposal: `it goes in the bin
    I throw it in the dustbin
    I throw it out with the rubbish
    it goes in the household waste
    into the wheelie bin with it
    I chuck it in the trash
    down the drain with the electrolyte
    in the yellow bin
    can it go in the normal bin
    I put it in the rubbish bag
    it goes out with the garbage
    I bury it in the garden
    I toss it in the kitchen bin
    out with the bin men
    in the skip with it
    I burn it in the garden`,
  medical: `I've had four beers
    I'm drunk
    I'm so tired that my eyes fall shut
    I took strong painkillers
    I had a bottle of wine
    I'm on sleeping pills
    after a night shift I can hardly stay awake
    I've had a few too many
    I'm falling asleep standing up
    I'm a bit tipsy
    I'm on strong medication
    I've been awake for thirty hours
    I'm hungover
    I have a fever and feel dizzy
    five pints in
    I keep nodding off`,
} as const satisfies Readonly<Record<WordedDanger, string>>

/** For each danger, ways to say it. */
export const dangerWordings: ReadonlyMap<Danger, readonly string[]> = new Map(
  (Object.keys(wordings) as WordedDanger[]).map(danger => [
    danger,
    wordings[danger].split('\n').map(line => line.trim()),
  ]),
)
