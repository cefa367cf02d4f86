// What denies, what only looks like it, and where a denial ends.

export const denial = {
  /** Denies what follows it. */
  deny: `not, no, never, none, without, isnt, arent, wasnt, werent, dont, doesnt, didnt, wont, hasnt,
    havent, hadnt, aint, =neither, =nor, nothing, nowhere, nobody, cannot, cant, couldnt, wouldnt,
    shouldnt, mustnt, =zero, nearly, almost, instead of, rather than, far from, anything but, free of,
    =nope, nowt, dnt, didt, doesn, didn, isn, wasn, hasn, nicht, kein, keine, keinen, keiner, =nie,
    niemals, ohne, =pas, jamais, =sans, nunca, =sin, =nada, niet, geen, nooit, zonder, =non, =mai,
    senza, =ni, ninguna, aucun, aucune, nessun, nessuna, nem, sem`,
  /** Looks like a denial and is none. */
  noDenial: `no problem, no idea, no time, no hurry, no rush, no matter, no wonder, no room, no space,
    no reason, no good, no choice, no luck, no clue, no chance, no other, no wait, no doubt, no fun,
    not only, not just, not sure, not yet, why not, or not, if not, not bad, not too bad, nothing else,
    nothing happened, dont know, dont care, dont mind, dont worry, dont tell me, dont ask, dont want,
    didnt want, doesnt matter, dont say, dont remember, dont see, cant wait, cant help, no one,
    no more than, not more than, not much, not far, not long, not many, not really sure, no mains,
    no table, not a test, not joking, not kidding, no joke, not that, whats wrong, no manual,
    not quite flat, not enough`,
  /** A denial does not reach past these. */
  turns: `but, so, because, =cos, =coz, =cause, =bc, =cuz, though, although, while, whilst, when, until,
    till, =til, then, unless, except, whereas, if, since, =instead, otherwise, =thats, which, only,
    unlike, just, aber, sondern, =mais, =pero, =maar, =ma, weil, parce, porque, omdat, perche`,
  /** Asks for a reason, wherever it stands. */
  asksAnywhere: `why, warum, wieso, weshalb, pourquoi, porque, waarom, whats wrong with, what happens if, how come,
    what if`,
  /** Asks for leave or a reason: a denial right behind it denies nothing. */
  asks: `why, warum, wieso, weshalb, pourquoi, porque, waarom, may, might, can, could, shall, should, must,
    is it, is, what if, suppose, would, do i, do we, does it, whats wrong, what happens if, how come,
    why cant, cant i, cant we, dont i`,
  /** Was once, or is somebody else's. */
  once: `last year, last season, last winter, last summer, last spring, last autumn, last fall, last month,
    last time, last decade, years ago, year ago, months ago, month ago, =ago years, yrs ago, long ago,
    ages ago, back in #, in #1950-2035, last yr, last yrs, in the eighties, in the nineties,
    in the past, used to, once upon, previously, formerly, yesteryear, in my youth, as a kid,
    back then, in those days, those days, in spring, in june, in july, in may, in march, in april`,
  /** The thing is no more. */
  gone: `went to recycling, went to the recycling, went to the recyclers, to the recycling,
    at the recycling, recycling yard, handed in, handed it in, gave away, gave it away,
    gave it to recycling, gave to recycling, given away, threw out, thrown out, threw away,
    thrown away, scrapped, is scrap, written off, wrote off, is gone, are gone, thats gone, ones gone,
    long gone, went to e, went to waste, went back, sent back, took back, went in the skip,
    went to the tip, to the tip, is history, retired it, retired them, got rid, disposed of, binned it,
    took it off me, was replaced, replaced it, got replaced, replaced with, put a new one, put new one,
    new one on, has a new, with another pack, another pack, other pack, different pack, bought since,
    bought after, bought a new, bought new, is a new one, fresh one, this ones new, this one is new,
    this is the new, thats the new, new one, its successor, sold it, sold them, i sold, at the yard,
    to the yard, e waste`,
} as const
