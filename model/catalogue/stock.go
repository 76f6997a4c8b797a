package catalogue

import (
	"math"
	"strings"
)

// What a shop buys things as. A shop lists it in its own file; figures do not go by it.

// Stock is a thing of the bill as this shop orders it.
type Stock struct {
	Of       string  // the part as the bill calls it: "AS22759/32 22", "boot-90-18", "Injector, 2 ways"
	What     string  // the group of the bill it is in, "wire", "contact"; "": whichever
	Colour   string  // of wire: the code of its colour; "": whichever
	Number   string  // the shop's or the maker's own number
	Supplier string  // "" is not said
	Pack     float64 // how many pieces or metres come together; 0 is not said
}

func (b *builder) stock(e *entry) {
	s := Stock{Of: e.text("of", true), What: e.text("what", false), Colour: e.text("colour", false), Number: e.text("number", true),
		Supplier: e.text("supplier", false), Pack: e.number("pack", false, span{lo: 1e-3, hi: 1e6})}
	b.claim(e, "stock", "of", s.key())
	b.c.Stock = append(b.c.Stock, s)
}

// key tells one entry from another.
func (s Stock) key() string { return strings.TrimSpace(s.What + " " + s.Of + " " + s.Colour) }

// StockOf is what a shop orders a row of the bill as: of entries that fit, the one that says most.
func (c *Catalogue) StockOf(what, part, colour string) (Stock, bool) {
	best, most := Stock{}, math.MinInt
	for _, s := range c.Stock {
		if s.Of != part || s.What != "" && s.What != what || s.Colour != "" && s.Colour != colour {
			continue
		}
		says := 0
		for _, word := range []string{s.What, s.Colour} {
			if word != "" {
				says++
			}
		}
		if says > most {
			best, most = s, says
		}
	}
	return best, most > math.MinInt
}
