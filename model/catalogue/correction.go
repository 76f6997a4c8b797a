package catalogue

import (
	"fmt"
	"strings"

	"github.com/BurntSushi/toml"

	"contralay/model/unit"
)

// Correction is what a shop has learned from what it measured, accepted by somebody: what
// is measured stands so much over what is predicted, with so much spread.
type Correction struct {
	Of        string     // "over, 3 layers", "wall, AS23053/16", "wire used, AS22759/32 22"
	Bias      unit.Ratio // mean of measured ÷ predicted, less 1
	Spread    unit.Ratio // standard deviation of that
	Low, High unit.Ratio // interval of Bias
	Readings  int
	On        string // the day it was accepted
	From      string // what it was learned from
	Withdrawn bool   // taken back: what was learned before is not used

	// Of work alone, "minutes, cut", which has no bias and changes no sheet.
	Each       float64 `json:",omitempty"` // minutes a piece; 0 of all else
	EachSpread float64 `json:",omitempty"` // of one piece
	Pieces     int     `json:",omitempty"` // that it rests on
}

// MinutesOf begins the kind of what is only how long work takes.
const MinutesOf = "minutes, "

// IsTime reports whether it is how long work takes, which changes no figure of a sheet.
func (c Correction) IsTime() bool { return strings.HasPrefix(c.Of, MinutesOf) }

// mostEach is the most minutes a piece of any work takes. Ours, no source.
const mostEach = 10_000

// mostBias is the most that a correction may be: a shop whose bundles stand a fifth off the
// sheet builds something else than the sheet. Ours, no source.
const mostBias = 0.2

func (b *builder) correction(e *entry) {
	bias := span{-mostBias, mostBias}
	c := Correction{
		Of:       e.text("of", true),
		Bias:     unit.Ratio(e.number("bias", false, bias)),
		Spread:   unit.Ratio(e.number("spread", false, span{0, mostBias})),
		Low:      unit.Ratio(e.number("low", false, span{-1, 1})),
		High:     unit.Ratio(e.number("high", false, span{-1, 1})),
		Readings: e.whole("readings", false, 0, 1_000_000),
		On:       e.text("on", false),
		From:     e.text("from", false),

		Each:       e.number("minutes", false, span{0, mostEach}),
		EachSpread: e.number("minutes_spread", false, span{0, mostEach}),
		Pieces:     e.whole("pieces", false, 0, 1_000_000_000),
	}
	if _, given := e.vals["withdrawn"]; given {
		c.Withdrawn = e.flag("withdrawn")
	}
	b.c.Corrections = append(b.c.Corrections, c)
}

// Correction is what is in use of one kind: the last that was accepted, unless it was
// withdrawn.
func (c *Catalogue) Correction(of string) (Correction, bool) {
	for k := len(c.Corrections) - 1; k >= 0; k-- {
		if c.Corrections[k].Of == of {
			return c.Corrections[k], !c.Corrections[k].Withdrawn
		}
	}
	return Correction{}, false
}

// Text is a correction as a file holds it: it is appended, so that the file is its own
// history.
func (c Correction) Text() string {
	says := fmt.Sprintf("bias     = %.5f\nspread   = %.5f\nlow      = %.5f\nhigh     = %.5f\n", float64(c.Bias), float64(c.Spread),
		float64(c.Low), float64(c.High))
	if c.IsTime() {
		says = fmt.Sprintf("minutes  = %.4f\nminutes_spread = %.4f\npieces   = %d\n", c.Each, c.EachSpread, c.Pieces)
	}
	says += fmt.Sprintf("readings = %d\non       = %s\nfrom     = %s\n", c.Readings, tomlText(c.On), tomlText(c.From))
	if c.Withdrawn {
		says = fmt.Sprintf("on       = %s\nwithdrawn = true\n", tomlText(c.On))
	}
	return fmt.Sprintf("\n[[correction]]\nof       = %s\n%s", tomlText(c.Of), says)
}

// tomlText is a text in quotes as TOML has it.
func tomlText(s string) string {
	text, _ := toml.Marshal(map[string]string{"t": strings.ToValidUTF8(s, "\uFFFD")}) // no text is refused
	return strings.TrimSpace(strings.TrimPrefix(string(text), "t = "))
}
