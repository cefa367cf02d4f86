// Words that questions are asked with: made of these alone a name would be lost in one.

const fillers = `
a about actually again all also am amp amps an and any anyone are as at back bag batteries battery be been before best
board buddy but by can cell cells charge charged charger charges charging correct could current currently do does done
each enough ever every longer meter reads says shows feed few fill flight fly for from full get getting give go going good got ground guys hand has have having
he hello help here hey hi his how i i'd i'll i'm i've if in into is it it's its just kind know let like long look lot
make many max maximum may me mean minutes most much must my need needed needs next nice now of off ok okay on one ones
only onto or other our out over pack packs per please possible power put quick quickly rate ready really right run safe safely
say see set setting settings she should so some sort source start step steps still stop suitable supply take takes taking tell
thank thanks that the their them then there these they thing this those through till time times to today tomorrow tonight too top
try trying until up us use used using via volts want was way we well were what what's when where whether which while who
why will with without work works would yet you your
`

const known = new Set(fillers.trim().split(/\s+/))

export const isQuestionWord = (word: string): boolean => known.has(word)
