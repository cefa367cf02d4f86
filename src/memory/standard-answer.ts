// Standard answers: what moderators have saved under a title, and the card that shows it in a chat.

/** A question whose answer is worked out anew each time, or text in the moderators' own words. */
export interface Saying {
  readonly title: string
  readonly kind: 'question' | 'text'
  /** As typed: saved names stay names, so that the answer follows what they stand for. */
  readonly content: string
}

/** The message that shows a standard answer. */
export interface Card {
  readonly message: string
  /** Where the platform has links to messages. */
  readonly link?: string
  /** Whether we have pinned it; what people do with the pin afterwards is theirs. */
  readonly pinned: boolean
  /** Of the reply it shows. */
  readonly digest: string
  /** When we last edited it; absent where we have not yet. */
  readonly editedAt?: Date | undefined
}

export interface StandardAnswer extends Saying {
  readonly id: string
  readonly community: string
  /** The channel or room of its card. */
  readonly place: string
  /** The question in canonical notation; empty for text. */
  readonly canonical: string
  /** Absent where none was posted, or the one posted was deleted. */
  readonly card?: Card
  /** Goes up with every change of any part. */
  readonly revision: number
}

export type NewAnswer = Pick<StandardAnswer, 'community' | 'title' | 'kind' | 'content' | 'canonical' | 'place'>

export interface AnswerMemory {
  /** Titles are told apart without regard to case. `most` is for the community. With an `id` it is one that was removed. */
  add(answer: NewAnswer & { readonly id?: string }, most: number): Promise<StandardAnswer | 'taken' | 'full'>
  get(id: string): Promise<StandardAnswer | undefined>
  find(community: string, title: string): Promise<StandardAnswer | undefined>
  /** Those whose question is this one. */
  asking(community: string, canonical: string): Promise<readonly StandardAnswer[]>
  /** By title. */
  list(community: string): Promise<readonly StandardAnswer[]>
  /** The communities that have any. */
  communities(): Promise<readonly string[]>
  /** What is not named stays: of two moderators at once neither undoes what the other alone has changed. */
  change(
    id: string,
    changes: Partial<Saying & Pick<StandardAnswer, 'canonical'>>,
  ): Promise<'changed' | 'missing' | 'taken'>
  /** Notes what became of the card, unless the answer was changed since it was `seen`: then false, and nothing is noted. */
  settle(seen: StandardAnswer, now: Pick<StandardAnswer, 'place' | 'canonical' | 'card'>): Promise<boolean>
  remove(id: string): Promise<StandardAnswer | undefined>
}
