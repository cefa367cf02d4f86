// Who asks, and where: what a surface knows of a question besides its words.

export interface Person {
  /** Unique across surfaces: "discord:123", "matrix:@ada:example.org", "room:pilot". */
  readonly id: string
  readonly name: string
  /** May change what the whole community shares. */
  readonly moderates: boolean
}

/** A server, a space, or one person's direct messages. */
export interface Community {
  readonly id: string
  /** Where the platform knows one. */
  readonly name?: string | undefined
}

/** The channel or room a question was asked in. */
interface Place {
  readonly id: string
  /** Only the asker and the assistant see it. */
  readonly direct: boolean
}

/** In small letters, as ids begin with it. */
export type SurfaceName = string

export interface Asked {
  /** Unique across surfaces, and the same whenever the platform tells of it again. */
  readonly id: string
  /** When it was asked, by the platform's clock. */
  readonly at_ms: number
  /** What the surface needs to answer it later, as JSON has it, and for how long it can. */
  readonly way: unknown
  readonly openFor_s: number
  /** To the message, or as near to it as the platform has links. */
  readonly link?: string
}

export interface Occasion {
  readonly surface: SurfaceName
  readonly asker: Person
  readonly community: Community
  readonly place: Place
  /** Absent where it comes once and is answered at once. */
  readonly asked?: Asked
}

/** Whose turn it is where many want work done at once. */
export interface Turn {
  readonly club: string
  readonly member: string
}

export const turnOf = ({ community, asker }: Pick<Occasion, 'community' | 'asker'>): Turn => ({
  club: community.id,
  member: asker.id,
})
