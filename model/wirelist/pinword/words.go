package pinword

import (
	"strings"
	"sync"

	"contralay/model/wirelist/signs"
)

// Is reports whether a folded word says that the name of a cavity follows.
func Is(w string) bool { return plain()[behind.TrimRight(w)] }

// IsWith reports whether a folded word says so only where a connector or nothing stands before it: it is the word for other things too.
func IsWith(w string) bool { return other()[behind.TrimRight(w)] }

// plain are words for a cavity. Common words, from memory, no source.
var plain = setOf(`pin pins cavity cav way terminal term pole
	stift kontakt kammer klemme kl anschluss pol
	broche borne voie alveole
	pino pata patilla polo contacto borna pinul
	piedino contatto morsetto terminale
	aansluiting klem
	styk zacisk nozka bolec wyprowadzenie
	vyvod svorka kolik dutinka spicka
	plint stiftet pinne pinnen klamma
	ben benet klemmen
	nasta napa pinni kontakti kosketin liitinnasta
	erintkezo kapocs sorkapocs polus labszam
	pim bacak klemens
	sponka stezaljka
	вывод контакт пин клемма вивід клема επαφη ακροδεκτης`)

// other are words for a cavity that are words for something else as well: a pen, a foot, a switch, the end of a thing.
var other = setOf(`pen pool plot contact lab uc contato terminalul position`)

// setOf is the set of the words of a text. Nothing writes it.
func setOf(text string) func() map[string]bool {
	return sync.OnceValue(func() map[string]bool {
		all := map[string]bool{}
		for _, w := range strings.Fields(text) {
			all[w] = true
		}
		return all
	})
}

// behind are signs behind a word for a cavity.
var behind = signs.Of(".:")
