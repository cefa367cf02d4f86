// What a host gets: the example settings name every variable, and the files agree with the program.

import { readFileSync } from 'node:fs'
import { parseEnv } from 'node:util'
import { describe, expect, it } from 'vitest'
import { createMetrics } from '../../../src/http/metrics.ts'
import { readConfig, variableNames } from '../../../src/program/config.ts'

const read = (name: string) => readFileSync(new URL(`../../../deploy/${name}`, import.meta.url), 'utf8')

describe('.env.example', () => {
  const example = parseEnv(read('.env.example'))

  it('names every variable that is read, and no other', () => {
    expect(Object.keys(example).sort()).toEqual([...variableNames].sort())
  })

  it('can be used as it stands, and holds no secret', () => {
    const config = readConfig(example)
    expect(config.DISCORD_TOKEN).toBeUndefined()
    expect(config.DATABASE_URL).toBeUndefined()
  })
})

describe('the container', () => {
  it('takes only what it copies, and no development dependencies', () => {
    const file = read('Containerfile')
    expect(file).toContain('npm ci --omit=dev')
    const copied = [...file.matchAll(/^COPY (?!--from)(.+) \S+$/gm)].flatMap(([, names = '']) => names.split(' '))
    const allowed = read('Containerfile.dockerignore').match(/(?<=^!).+/gm)
    expect([...new Set(copied)].sort()).toEqual([...(allowed ?? [])].sort())
  })

  it('listens where its published port leads, and publishes it on the host alone', () => {
    expect(read('Containerfile')).toContain('CHARGEHAND_HTTP_HOST=0.0.0.0')
    const compose = read('compose.yaml')
    expect(compose).toContain('CHARGEHAND_HTTP_HOST: 0.0.0.0')
    expect(compose).toContain('- "127.0.0.1:8080:8080"')
  })
})

describe('the dashboard and the alerts', () => {
  it('ask for nothing that is not measured', async () => {
    const measured = await createMetrics({ waiting: () => 0, waited_s: () => 0 }, { waiting: async () => [] }).text()
    const { panels } = JSON.parse(read('dashboard.json')) as { panels: { targets: { expr: string }[] }[] }
    const asked = [...panels.flatMap(({ targets }) => targets.map(({ expr }) => expr)), read('alerts.yml')].join('\n')
    const names = new Set(asked.match(/\b(?:chargehand|nodejs|process)_[a-z0-9_]+/g))
    expect(names.size).toBeGreaterThan(4)
    for (const name of names) expect(measured).toContain(`# HELP ${name.replace(/_bucket$/, '')} `)
    expect(read('alerts.yml').match(/- alert: /g)).toHaveLength(4)
  })
})

describe('the configuration', () => {
  it('names what Discord by HTTP lacks', () => {
    expect(() => readConfig({ DISCORD_INTERACTIONS: 'http' })).toThrow(
      /DISCORD_PUBLIC_KEY: needed .*\n.*CHARGEHAND_HTTP_PORT: needed/,
    )
  })
})
