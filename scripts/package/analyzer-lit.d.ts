declare module '@custom-elements-manifest/analyzer/src/features/framework-plugins/lit/lit.js' {
  export function litPlugin(): readonly { readonly name: string }[];
}
