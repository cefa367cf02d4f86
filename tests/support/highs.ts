// The HiGHS solver, loaded once. Its types describe the ES module as a CommonJS one: what they call the module is its default.

import module from 'highs'

const load = module as unknown as typeof module.default

export const highs = await load()
