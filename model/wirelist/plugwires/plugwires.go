package plugwires

import (
	"slices"
	"strconv"
	"strings"

	"contralay/model/wirelist/name"
	"contralay/model/wirelist/point"
	"contralay/model/wirelist/table"
	"contralay/model/wirelist/value"
)

// Colours are some colours with what stands beside each, and what speaks for wires.
type Colours struct {
	Plug    string   // the text that could name their plug
	Names   []string // what each is said to be
	Far     int      // how many are said to go somewhere
	Sized   bool     // some has a size of wire
	Said    bool     // a heading above says that wires or plugs follow
	Striped bool     // a colour has a stripe, as no lamp and no team has
	Counted bool     // a text says of the plug that it has as many pins
}

// Wires reports whether they are the wires of one plug.
func (c Colours) Wires() bool {
	nets, grounds := c.Far, 0
	for _, n := range c.Names {
		ground := IsGroundLike(n)
		if ground {
			grounds++
		}
		if ground || point.IsNetLike(n) {
			nets++
		}
	}
	half := 2*nets >= len(c.Names)
	here := c.Counted || name.SaysConnector(c.Plug) || SaysWires(c.Plug)
	switch of := LookedUp(c.Plug); {
	case c.Plug == "", of == Legend && !here:
		return false
	case of == colours && !c.Sized && (grounds == 0 || !SaysWires(c.Plug)): // "Plug colours": of one plug, or of every one
		return false
	case of == colours && isRule(c.Plug):
		return false
	}
	return here || c.Sized || half && (c.Said || grounds > 0 && nets > 1) || (c.Said || c.Striped) && grounds > 0
}

// Striped reports whether a column has a colour with a stripe.
func Striped(rows []table.Row, col int) bool {
	return slices.ContainsFunc(rows, func(r table.Row) bool {
		if col >= len(r.Cells) {
			return false
		}
		c, _ := value.ParseColour(r.Cells[col], "")
		return len(c) > 1
	})
}

// isRule reports whether a text has no word but those for wires and for colours: no plug is called so.
func isRule(text string) bool {
	return !slices.ContainsFunc(name.Words(table.Fold(text)), func(w string) bool {
		return !SaysWires(w) && LookedUp(w) == "" && len(w) > 3
	})
}

// SaysWires reports whether a heading has a word for wires or for what they are plugged into.
func SaysWires(text string) bool {
	return slices.ContainsFunc(name.Words(table.Fold(text)), func(w string) bool {
		switch one := strings.TrimSuffix(w, "s"); one {
		case "wire", "cablage", "verdrahtung", "verkabelung", "cableado", "cablaggio", "bedrading", "ader", "adern", "fil", "hilo", "filo",
			"fili", "kabel", "kablage", "przewody", "okablowanie", "kabling", "zapojeni", "prise", "conectore", "stekker", "wtyczka",
			"wtyczki", "konektor", "kontaktdon", "presa", "jack", "header":
			return true
		default:
			return name.IsPinTitle(one) || name.IsPinTitle(w)
		}
	})
}

// NamesPlug reports whether the title of a list has such a word, or ends with one for a device: "Tractor ignition switch".
func NamesPlug(title string) bool {
	w := name.Words(table.Fold(title))
	return SaysWires(title) || len(w) > 1 && name.IsDeviceWord(w[len(w)-1])
}

// CountsPins reports whether a text says that something has as many pins or wires: "3 pin plug, female".
func CountsPins(text string, n int) bool {
	w := name.Words(table.Fold(text))
	for k := 0; k+1 < len(w); k++ {
		if m, err := strconv.Atoi(w[k]); err == nil && m == n {
			switch strings.TrimSuffix(w[k+1], "s") {
			case "pin", "way", "wire", "core", "lead", "pol", "polig", "poliger", "polige", "adrig", "broche", "fil", "pole", "conductor",
				"hilo", "filo", "fili", "aderig", "polet", "zyl", "zylowy":
				return true
			}
		}
	}
	return false
}

// CountedWires is how many wires a text says that a plug has; 0 where it says none.
func CountedWires(text string) int {
	w := name.Words(table.Fold(text))
	for k := 0; k+1 < len(w); k++ {
		if n, err := strconv.Atoi(w[k]); err == nil && name.CountWord(w[k+1]) == "wires" {
			return n
		}
	}
	return 0
}

// IsGroundLike reports whether the name of a net is one of a ground, which no state of a lamp is.
func IsGroundLike(signal string) bool {
	return slices.ContainsFunc(name.Words(table.Fold(signal)), func(w string) bool {
		switch w {
		case "gnd", "ground", "earth", "masse", "massa", "masa", "tierra", "0v", "jord", "minus", "return", "common":
			return true
		}
		return false
	}) || strings.HasPrefix(table.Fold(signal), "0 v")
}

// Legend and colours are what the text above some colours can be, other than the name of a plug: colours of lamps with what each
// means, or a rule for the colours of wires.
const (
	Legend  = "legend"
	colours = "colours"
)

// LookedUp is what the words of such a text say it is of; "" where they say nothing.
func LookedUp(text string) (of string) {
	for _, w := range name.Words(table.Fold(text)) {
		switch strings.TrimSuffix(w, "s") {
		case "colour", "color", "code", "farbe", "farben", "farbcode", "couleur", "colore", "kleur", "kleuren", "farve", "farver":
			return colours
		case "led", "statu", "state", "indicator", "blink", "light", "legend", "key", "meaning", "signal", "anzeige", "legende",
			"leuchte", "voyant", "luce", "luz":
			of = Legend
		}
	}
	if of == Legend && SaysWires(text) {
		return ""
	}
	return of
}
