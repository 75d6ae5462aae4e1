/** Made by the build (vite.config.ts). */
declare module 'virtual:sample-answer' {
  const answer: import('../../report/sample-answer.ts').SampleAnswer;
  export default answer;
}
