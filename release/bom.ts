// The bill of materials in CycloneDX's form, which npm writes of the lock file.

import { execFileSync } from 'node:child_process'
import type { Installed } from './licences.ts'

interface Bom {
  readonly bomFormat: string
  readonly metadata: { readonly component: { name: string; readonly version: string } }
  readonly components: readonly { readonly name: string; readonly version: string; readonly licenses?: unknown[] }[]
}

/** Of the program under its own name, not under that of its folder. Throws where npm cannot. */
export function bomOf(program: string): Bom {
  const told = execFileSync(
    'npm',
    ['sbom', '--package-lock-only', '--omit', 'dev', '--sbom-format', 'cyclonedx', '--sbom-type', 'application'],
    { encoding: 'utf8', maxBuffer: 2 ** 26 },
  )
  const bom = JSON.parse(told) as Bom
  bom.metadata.component.name = program
  return bom
}

export function faultsOfBom({ bomFormat, components }: Bom, packages: readonly Installed[]): readonly string[] {
  const known = new Set(packages.map(({ name, version }) => `${name}@${version}`))
  const strange = components.filter(({ name, version }) => !known.has(`${name}@${version}`))
  return [
    ...(bomFormat === 'CycloneDX' && components.length > 0 ? [] : ['npm wrote no bill of materials']),
    ...strange.map(({ name, version }) => `${name}@${version} is not in the lock file`),
  ]
}
