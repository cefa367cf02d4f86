// What people may expect of a surface, and where a test shows what it does.

/** In the order of the page. */
export const features = {
  plain: 'A question in plain words',
  told: 'A question option by option',
  completed: 'Words offered while they are typed',
  layers: 'Why, figures and care',
  offered: 'What an answer offers to ask next',
  further: 'Going on from an answer in own words',
  threads: 'Going on in a thread',
  hints: 'A question that is shown to be typed',
  pictures: 'Pictures and files',
  slow: 'An answer that takes long',
  edited: 'An edit of a question',
  deleted: 'A question that is deleted',
  again: 'A question that comes twice',
  away: 'A question from while it was away',
  late: 'An answer that comes late',
  flood: 'Somebody who asks faster than people do',
  others: 'Talk among people, and other machines',
  encrypted: 'An encrypted room',
  verified: 'Whether it is itself',
  own: "What is one's own",
  reminders: 'A reminder',
  lacking: 'A permission that lacks',
  moderators: 'Who moderates',
  cards: 'A standard answer',
  alerts: 'An emergency, told to moderators',
  wrong: 'An answer marked as wrong',
  digest: 'What a week held, told to moderators',
  facts: 'Whom to call, and where to hand a pack in',
  moved: 'A place that is replaced by another',
  limits: 'A platform that asks to wait',
  faults: 'A platform with faults of its own',
  silence: 'A platform that falls silent',
  stop: 'A stop while answers are under way',
} as const

export type Feature = keyof typeof features

/** What it does; the file below tests/, without its ending; so much of the name of one test in it that it is no other's. */
export type Shown = readonly [does: string, file: string, test: string]

/** A feature that a platform has no such thing for is absent: it cannot be left out by an oversight. */
export type Surface = Readonly<Record<Feature, Shown | 'no such thing'>>
