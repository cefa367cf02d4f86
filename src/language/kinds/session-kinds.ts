// Options that take several packs, chargers or sources.

import type { Charger } from '../../charging/things/charger.ts'
import { type Counted, type ListRules, readList, writeList } from '../quantities/list.ts'
import type { Read } from '../scan/read.ts'
import { readCharger, writeCharger } from '../things/charger.ts'
import {
  readStandingPack,
  readStandingSource,
  type StandingPack,
  type StandingSource,
  writeStandingPack,
  writeStandingSource,
} from '../things/standing.ts'
import { type Bag, bagRules, readBag, writeBag } from '../things/weighed.ts'
import { startingWith, type ValueKind } from './value-kind.ts'

function listKind<T>(
  name: string,
  rules: ListRules,
  readItem: (text: string) => Read<T>,
  writeItem: (item: T) => string,
): ValueKind<readonly Counted<T>[]> {
  return {
    name,
    example: rules.example,
    read: text => readList(text, rules, readItem),
    write: entries => writeList(entries, writeItem),
    complete: startingWith([rules.example]),
  }
}

/** Each with its mass where that counts. */
export const bagKind: ValueKind<Bag> = {
  name: 'packs',
  example: bagRules.example,
  read: readBag,
  write: writeBag,
  complete: startingWith([bagRules.example]),
}

export const sessionPacksKind = listKind<StandingPack>(
  'session packs',
  { listed: 'packs', most: 60, example: '4x 3S 720 LiHV at 3.7V; 2x 2S 450 LiPo at 20%' },
  readStandingPack,
  writeStandingPack,
)

export const sessionChargersKind = listKind<Charger>(
  'session chargers',
  { listed: 'chargers', most: 24, example: '2x 0.1-5A by 0.1 80W; 0.3/0.8/1.5/3A 60W' },
  readCharger,
  writeCharger,
)

export const sessionSourcesKind = listKind<StandingSource>(
  'session sources',
  { listed: 'sources', most: 4, example: 'PD 65W; 4S 5000 Li-ion at 80%' },
  readStandingSource,
  writeStandingSource,
)
