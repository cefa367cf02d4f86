// The schemas generated from Discord's OpenAPI document come without types.

declare module 'discord-api-spec/zod' {
  import type { ZodMiniType } from 'zod/mini'
  export const ApplicationCommandUpdateRequestSchema: ZodMiniType
  export const CreateMessageInteractionCallbackRequestSchema: ZodMiniType
  export const UpdateMessageInteractionCallbackRequestSchema: ZodMiniType
  export const ApplicationCommandAutocompleteCallbackRequestSchema: ZodMiniType
  export const PongInteractionCallbackRequestSchema: ZodMiniType
  export const IncomingWebhookUpdateRequestPartialSchema: ZodMiniType
  export const IncomingWebhookRequestPartialSchema: ZodMiniType
  export const MessageCreateRequestSchema: ZodMiniType
  export const ModalInteractionCallbackRequestSchema: ZodMiniType
  export const MessageEditRequestPartialSchema: ZodMiniType
}
