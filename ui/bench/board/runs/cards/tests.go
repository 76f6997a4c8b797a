package cards

import (
	"fmt"
	"slices"
	"strings"

	"contralay/calc/query/run"
	"contralay/model"
	"contralay/ui/bench/board/runs/card"
	"contralay/ui/bench/board/runs/say"
)

// testCard is one test.
func testCard(m Hand, s run.RunStep, p run.Piece, k int) card.Card {
	c := p.Check
	result, last := c.Result(m.Build, s.Key)
	of := fmt.Sprintf("%d of %d", k+1, len(m.Pieces))
	out := card.Card{Title: say.Step(m.Model, s) + ", " + of, Number: p.ID, Bar: marksOf(m, s, k, ""), Under: say.Limit(c)}
	if w, is := m.Sheet.Index.Wire[p.ID]; is {
		out.Colour = m.H.Wires[w].Colour.V
	}
	switch c.Kind {
	case run.Rings:
		out.Low = []string{c.From, c.To}
		out.Lines = []string{c.From + " must ring to " + c.To, say.Limit(c)}
		if len(c.Via) > 1 {
			out.More = []string{"by way of " + strings.Join(c.Via, ", ")}
		}
	case run.Silent:
		out.Number, out.Low = "open", []string{c.From, "rings to nothing"}
		out.Lines = []string{c.From + " leads to no other end: it must ring to nothing"}
		out.Under = out.Lines[0]
	case run.Isolated:
		out.Number, out.Low = c.From, []string{of, "isolation"}
		out.Lines = []string{"isolation of the nets that begin at " + c.From + ", against every other, shields and shells",
			say.Limit(c)}
	case run.Drops:
		out.Number, out.Colour, out.Low = c.Name, "", []string{of, "loaded drop"}
		name := ""
		if f := slices.IndexFunc(m.H.Feeds, func(f model.Feed) bool { return f.ID == c.Name }); f >= 0 {
			name = m.H.Feeds[f].Name.V
		}
		out.Lines = []string{strings.TrimSpace("switch its load on: "+name) +
			", the drop of wire " + strings.Join(c.Via, ", ") + " and back",
			say.Limit(c)}
	case run.Pulled:
		out.Number, out.Low = fmt.Sprintf("pull %d", c.Sample), []string{of, "sample"}
		out.Lines = []string{strings.Join(append([]string{s.Of}, say.CrimpParts(m.Model, s.Crimp)...), ", "), say.Limit(c)}
		out.Under = strings.Join(append([]string{say.Limit(c)}, say.CrimpParts(m.Model, s.Crimp)...), ", ")
	}
	if says := say.Result(c, result, last); says != "" {
		out.Lines = append([]string{says}, out.Lines...)
		if out.Under = says; result == run.Failed { // on a low screen, too, it stands beside its limit
			out.Under = "OUT: " + say.Read(c, last) + ", " + say.Limit(c)
		}
	}
	return out
}
