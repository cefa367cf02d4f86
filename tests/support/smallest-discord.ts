// The least that a discord.js bot can do: answer every interaction with the same words. Benches compare with it.

import { Client, Events, GatewayIntentBits } from 'discord.js'

export function smallestClient(api: string, token: string, words: string) {
  const client = new Client({ intents: [GatewayIntentBits.Guilds], rest: { api } })
  client.on(Events.InteractionCreate, interaction => {
    if (interaction.isRepliable()) interaction.reply(words)
  })
  return {
    start: async () => {
      const ready = new Promise(resolve => client.once(Events.ClientReady, resolve))
      await client.login(token)
      await ready
    },
    stop: () => client.destroy(),
  }
}
