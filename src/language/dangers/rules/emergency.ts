// Fire and its signs, and people hurt.

import type { DangerRule } from './rule.ts'

export const emergency: readonly DangerRule[] = [
  {
    danger: 'fire',
    tells: `@fire !extinguisher|blanket|brigade|service|door|escape|alarm|safe, @smell .5 @smellsOf,
      sweet .2 smell, nail varnish, nail polish, @smellsOf .2 @smell, on fire, white smoke, smoke from,
      smell .3 it, it smells, smells like .6 @smellsOf,
      @smell .8 nail|polish|solvent|sweet|burnt|burning, like nail polish|varnish,
      smell .2 from .2 @pack, @smell .3 near .2 @pack, @pack .3 @smell, charger .4 @smell, loud bang,
      bang from .3 bag|pack|box|charger, then a glow, started whistling, pack .3 whistling,
      getting fatter by .2 second, mist .3 off .2 pack, chemical smell, smell .3 in the shed,
      hot plastic, stinks`,
    hints: '@fire, @smell',
    excuses: `kettle hisses, it was the coffee machine, was the coffee, does her nails, the kettle,
      the fan i mean, burger van, bbq smoke, barbecue, no smell, no smoke, fire brigade, soldering iron,
      smoke detector, smoke alarm, toast is burning, toast, burnt toast, dinner is burning, bacon,
      candle, incense, cigarette, bonfire next door, pan on the, from the race, hand burning,
      kettle is whistling, firework next door, pack quiet, packs fine, firework`,
    passes: true,
  },
  {
    danger: 'injury',
    tells: `got .2 on my .3, in my eye, in the eye, electric shock, got a shock, breathed .3 smoke,
      breathed in, inhaled, throat .4 scratchy, throat .3 sore, coughing, on .2 fingers, on my hand,
      on my skin, burned my, burnt my, liquid on, stings, coughing|cough .4 since, got squirted,
      tickle|buzz|tingle|shock|belt .3 off .3 psu|casing|mains|supply|charger|socket,
      blister .2 on .3 palm|hand|finger|thumb, @body .3 blister|blisters|blistered|burnt|burned|scalded,
      burnt|burned|burn .3 @body, feel .2 dizzy|sick|ill .6 smoke|fumes, breathed .3 fumes,
      electrolyte .5 skin|eye|hand|mouth, @body .4 stings|tingles|burns|itches|hurts, juice .6 @body,
      burns on my skin, @body .3 @injured, @injured .3 @body, wet stuff on .3 @body,
      got a belt off the psu|casing|supply|mains|charger|socket, still tingling, red and stings,
      goo .4 cut|thumb|finger|hand|eye|mouth|skin, in his mouth|her mouth|my mouth,
      put .4 1s in his mouth, leaking .4 mouth, arm went dead, went dead .6 supply|mains|plug,
      breathing .3 tight|hard|difficult, chest .2 tight, tight .4 puff|smoke|fumes, cant breathe`,
    hints: '@injured .3 @body',
    excuses: `from cherries, burn hand, cant hold, in 98, warm to hold, cherries haha, from digging,
      from gardening, jam, nettles, wasp, bee sting`,
    passes: true,
  },
]
