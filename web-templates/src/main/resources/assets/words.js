// Says the sentences that came with a script's own tag, in the language of the page.
(() => {
  "use strict";
  const language = document.documentElement.lang;

  // What is given stands for {0}, {1} and so on; where there is one form for one and one for more, {0} is the number.
  const of = (script) => {
    const messages = JSON.parse(script.dataset.words);
    return (key, ...given) => {
      const message = messages[key] || messages[key + (given[0] === 1 ? ".one" : ".other")];
      return message.replace(/\{(\d)\}/g, (place, number) => given[number]);
    };
  };

  self.tankroundsWords = { of, locale: language === "en" ? "en-GB" : language };
})();
