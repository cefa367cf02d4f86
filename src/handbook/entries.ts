// Every entry of the handbook, theme by theme.

import alarms from './entries/alarms.json' with { type: 'json' }
import assistant from './entries/assistant.json' with { type: 'json' }
import balance from './entries/balance.json' with { type: 'json' }
import basics from './entries/basics.json' with { type: 'json' }
import bench from './entries/bench.json' with { type: 'json' }
import chargers from './entries/chargers.json' with { type: 'json' }
import charging from './entries/charging.json' with { type: 'json' }
import club from './entries/club.json' with { type: 'json' }
import cutoff from './entries/cutoff.json' with { type: 'json' }
import damaged from './entries/damaged.json' with { type: 'json' }
import disposal from './entries/disposal.json' with { type: 'json' }
import errors from './entries/errors.json' with { type: 'json' }
import field from './entries/field.json' with { type: 'json' }
import fireKit from './entries/fire-kit.json' with { type: 'json' }
import fitting from './entries/fitting.json' with { type: 'json' }
import flying from './entries/flying.json' with { type: 'json' }
import houseRules from './entries/house-rules.json' with { type: 'json' }
import hut from './entries/hut.json' with { type: 'json' }
import labels from './entries/labels.json' with { type: 'json' }
import leads from './entries/leads.json' with { type: 'json' }
import mains from './entries/mains.json' with { type: 'json' }
import meters from './entries/meters.json' with { type: 'json' }
import otherTypes from './entries/other-types.json' with { type: 'json' }
import packs from './entries/packs.json' with { type: 'json' }
import parallel from './entries/parallel.json' with { type: 'json' }
import places from './entries/places.json' with { type: 'json' }
import plugs from './entries/plugs.json' with { type: 'json' }
import storage from './entries/storage.json' with { type: 'json' }
import travel from './entries/travel.json' with { type: 'json' }
import warmth from './entries/warmth.json' with { type: 'json' }
import type { HandbookEntry } from './entry.ts'

/** In each theme related entries stand together. A test checks their form. */
export const handbook: readonly HandbookEntry[] = [
  ...basics,
  ...packs,
  ...labels,
  ...charging,
  ...chargers,
  ...bench,
  ...balance,
  ...cutoff,
  ...storage,
  ...warmth,
  ...places,
  ...houseRules,
  ...hut,
  ...fireKit,
  ...alarms,
  ...errors,
  ...damaged,
  ...disposal,
  ...travel,
  ...mains,
  ...field,
  ...leads,
  ...plugs,
  ...parallel,
  ...meters,
  ...flying,
  ...fitting,
  ...otherTypes,
  ...club,
  ...assistant,
] as readonly HandbookEntry[]
