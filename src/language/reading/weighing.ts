// What speaks for a choice and against it, beside how likely the words make it: each sign by what it is worth.

import type { Candidate } from '../candidates/sentence/candidate.ts'
import type { CommandWords } from '../sentence/vocabulary.ts'
import type { Fitted } from './fit.ts'
import { isToldGoal } from './told/slots.ts'

/**
 * Logarithms: what a sign multiplies the likelihood by. Found on people whom the model of intents never saw (`node
 * training/model/weigh.ts`), where whether values are left over and how bare a question is proved nothing.
 */
export const worth = {
  /** Times the logarithm of the likelihood. */
  likely: 1,
  /** A detail that it cannot do without. */
  lacks: -0.7,
  /** A list that takes no details, where a value is told. */
  idleList: -1,
  /** Volts of several cells, where a state of one is asked. */
  readings: -1.5,
  /** Where a pack is to go, which it does not ask. */
  goal: -0.9,
  /** A list of one pack, and nothing that several hang on. */
  lonePack: -1.2,
  /** How packs hang together, which it does not ask. */
  joined: -1,
  /** Somebody asks about a change, and does not want it made; or about people. */
  askedAbout: -1.6,
  /** Not surely a list, and nothing is told: set by hand, as a list beside the point helps nobody. */
  unsureList: -0.9,
  /** Not surely a change: set by hand, as what changes something is never guessed. */
  unsureChange: -0.5,
  /** Not surely a figure, and nothing is told to work it out from: set by hand, where the handbook has words on it. */
  unsureFigure: -2,
  /** Small talk where a pack is told. */
  idleWithPack: -1.1,
  /** What the handbook has nothing on. */
  notInHandbook: -1,
  /** Each pack that is told in full, and half as much for further figures: a question for the handbook tells few. */
  toldToHandbook: -0.45,
}

export type Signs = Partial<Record<keyof typeof worth, number>>

export const weighed = (signs: Signs): number =>
  Math.exp(Object.entries(signs).reduce((sum, [sign, times]) => sum + worth[sign as keyof typeof worth] * times, 0))

/** How well a command takes what is told. */
export function signsOfFit(command: CommandWords, fitted: Fitted, values: readonly Candidate[]): Signs {
  const { left, missing, options } = fitted
  const volts = left.filter(({ kind, text }) => kind === 'state' && /V/.test(text))
  const { packs, chargers, ports, places } = options
  const isSession = command.options.some(({ kind }) => kind === 'session packs')
  const isLone = isSession && packs !== undefined && !/;|^\d+x/.test(packs) && !(chargers ?? ports ?? places)
  return {
    lacks: Number(missing !== undefined),
    idleList: Number(isList(fitted) && tellsOfPacks(values)),
    readings: Number(volts.length > 1 || volts.some(({ holders }) => holders === 'rest')),
    goal: Number(left.some(isToldGoal)),
    lonePack: Number(isLone),
    joined: Number(left.some(isJoining)),
  }
}

export function signsOfHandbook(values: readonly Candidate[], inHandbook: number): Signs {
  const packs = values.filter(({ pack }) => pack?.capacity_Ah !== undefined).length
  const figures = values.filter(({ kind, text }) => kind !== 'count' && kind !== 'number' && /\d/.test(text)).length
  return { notInHandbook: Number(inHandbook < 1), toldToHandbook: packs + Math.max(0, figures - packs - 1) / 2 }
}

export const tellsOfPacks = (values: readonly Candidate[]): boolean =>
  values.some(({ kind }) => !['number', 'count', 'board', 'clock'].includes(kind))

const isJoining = ({ kind }: Candidate): boolean => kind === 'board' || kind === 'batch'

/** It takes no details: the words alone ask for it. */
export const isList = ({ options, missing }: Pick<Fitted, 'options' | 'missing'>): boolean =>
  Object.keys(options).length === 0 && missing === undefined
