// What a pack may run beside a model: a lamp, a fan, a phone.

const load =
  /\b(?:strips?|lamps?|lights?|leds?|bulbs?|torch|fans?|heater|blanket|pump|radio|speakers?|fridge|cool ?box|goggles|camera|router|screen|monitor|iron|kettle|projector|compressor)\b/i
/** It is the pack then that takes. */
const fed =
  /\b(?:charg\w*|fill\w*|top(?:s|ped|ping)? up|topping|through|via|in (?:line|series)|resistor|mains|wall|sockets?|outlets?|adapt[eo]rs?|suppl\w+|psu|laptop|usb|power ?bank|generator|alternator|dynamo|solar|panel|car|starter|leisure|lead|agm|\d{3} ?v)\b/i

/** Whether a text names a thing that takes from a pack, and nothing that fills it. */
export const namesLoad = (text: string): boolean => load.test(text) && !fed.test(text)
