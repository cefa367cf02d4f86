// What a club's digest tells of: kept only where the club wants one, until one has told of it.

export interface Noticed {
  readonly kind: 'refused' | 'not understood' | 'wrong'
  /** The family of dangers of a refusal, else empty. */
  readonly about: string
  /** To the message; empty where the platform has none. */
  readonly link: string
}

export interface NoticedMemory {
  add(community: string, at: Date, noticed: Noticed): Promise<void>
  of(community: string): Promise<readonly Noticed[]>
  /** Those of then or before. */
  drop(community: string, until: Date): Promise<void>
}
