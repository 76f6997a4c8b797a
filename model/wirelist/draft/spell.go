package draft

import (
	"strings"

	"contralay/model"
	"contralay/model/wirelist/table"
)

// Spell gives a plug that is called by a letter or a number alone the name that its title has, with the word before it: "A (34 pin)" is
// "Plug A (34 pin)" on the bench.
func (t *Term) Spell(titles []table.Row, called string) {
	first, _, _ := strings.Cut(called, " ")
	if first = strings.TrimRight(first, ",:;"); len(first) > 1 && strings.Trim(first, "0123456789") != "" || len(first) > 2 {
		return // "J1" is a name by itself
	}
	for _, r := range titles {
		_, text := r.Filled()
		text = strings.TrimRight(text, ": ")
		if word, ok := strings.CutSuffix(text, called); ok && len(strings.Fields(word)) == 1 {
			t.Name = model.Some(text)
			return
		}
	}
}
