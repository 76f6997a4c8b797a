package cards

import (
	"strings"

	"contralay/calc/query/run"
	"contralay/model"
	"contralay/ui/bench/board/runs/card"
	"contralay/ui/bench/board/runs/say"
)

// lotCard asks for the lot of a reel.
func lotCard(m Hand, s run.RunStep) card.Card {
	_, size, _ := strings.Cut(say.Reel(s.Of), ", ")
	c := card.Card{Title: say.Step(m.Model, s), Number: "lot", Second: size, Low: []string{say.Reel(s.Of), "its label"},
		Lines: []string{"Type the number on the label of " + say.Reel(s.Of) + ", before the first wire comes off it"}}
	c.Under = "type the number on its label"
	if all := LotsOf(m.Build, s.Of); len(all) > 0 {
		c.Lines = append(c.Lines, "written down: "+strings.Join(all, ", "))
		c.Under = c.Lines[1]
	}
	return c
}

// LotsOf are the lots on record of a reel, or of a spool.
func LotsOf(b *model.Build, of string) []string {
	var out []string
	for _, l := range b.Lots {
		if l.Of == of {
			out = append(out, l.Lot)
		}
	}
	return out
}
