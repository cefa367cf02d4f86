// Whose something is that the assistant remembers.

/** One person's, or shared by a community. */
export interface Owner {
  readonly scope: 'person' | 'community'
  /** Of the person or the community, unique across surfaces. */
  readonly id: string
}

/** The community of one that somebody's direct messages with us are. */
export const directCommunityOf = (person: string): string => person.replace(':', ':direct:')

/** There are no moderators but the person. */
export const isDirectCommunity = (community: string): boolean => /^[a-z]+:direct:/.test(community)
