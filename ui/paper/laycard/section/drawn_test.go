package section

import (
	"strings"
	"testing"
)

// How a disc is drawn, by hand: fillers grey, spares dashed, what is not in hand in grey ink and thin; a tracer that is in hand has a
// second ring in two halves, which meet where no number stands.
func TestHowADiscIsDrawn(t *testing.T) {
	circle := func(class, id, r, fill, ink, wide, more string) string {
		return `<circle class="` + class + `" data-of="` + id + `" cx="10" cy="20" r="` + r + `" fill="` + fill + `" stroke="` + ink +
			`" stroke-width="` + wide + `"` + more + `/>`
	}
	line, thin, unit := num(lineMM), num(thinMM), num(unitLineMM)
	within := func(wide float64) string { return num(5 - wide/2) }
	for _, c := range []struct {
		p    Piece
		want string
	}{
		{Piece{ID: "w", InHand: true}, circle("hand", "w", within(lineMM), "#fff", "#000", line, "")},
		{Piece{ID: "a<b"}, circle("below", "a&lt;b", within(thinMM), "#fff", "#888", thin, "")},
		{Piece{ID: "u", Kind: Unit, InHand: true}, circle("hand", "u", within(unitLineMM), "#fff", "#000", unit, "")},
		{Piece{ID: "s", Kind: Spare, InHand: true}, circle("hand", "s", within(lineMM), "#fff", "#000", line,
			` stroke-dasharray="1.4 .8"`)},
		{Piece{ID: "f", Kind: Filler, InHand: true}, circle("hand", "f", within(lineMM), "#ccc", "#000", line, "")},
		{Piece{ID: "f", Kind: Filler}, circle("below", "f", within(thinMM), "#ccc", "#888", thin, "")},
		{Piece{ID: "t", Tracer: true}, circle("below", "t", within(thinMM), "#fff", "#888", thin, "")},
	} {
		var b strings.Builder
		Disc{Piece: c.p, CX: 10, CY: 20, R: 5}.svg(&b)
		if b.String() != c.want {
			t.Errorf("%+v:\n%s, want\n%s", c.p, b.String(), c.want)
		}
	}
	var b strings.Builder
	Disc{Piece: Piece{ID: "t", Tracer: true, InHand: true}, CX: 10, CY: 20, R: 5}.svg(&b)
	r := 5 - lineMM - tracerGapMM // the halves begin and end beside the middle
	half := func(sweep string) string {
		return `<path class="tracer" data-of="t" d="M` + num(10-r) + " 20A" + num(r) + " " + num(r) + " 0 0 " + sweep + " " + num(10+r) +
			` 20" fill="none" stroke="#000" stroke-width="` + line + `"/>`
	}
	if want := circle("hand", "t", within(lineMM), "#fff", "#000", line, "") + half("1") + half("0"); b.String() != want {
		t.Errorf("%s, want\n%s", b.String(), want)
	}
}
