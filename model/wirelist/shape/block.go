package shape

import (
	"strings"
	"unicode"

	"contralay/model/wirelist/huekey"
	"contralay/model/wirelist/name"
	"contralay/model/wirelist/table"
	"contralay/model/wirelist/value"
)

// Block is a header row and what belongs to it, with what each column means.
type Block struct {
	Table  *table.Table
	Titles []table.Row // above the header
	Head   int         // its line; 0 where the columns have numbers only
	Cols   []Column
	Lang   string
	Key    huekey.ColourKey // what its short forms of colours mean, as far as the list says it or its letters
	Mark   value.Mark
	Rows   []table.Row

	Path   []table.Row // the headings of Markdown above, the outermost first
	Called string      // the connector, where no title names it and something else of the list does
	Said   string      // the connector, where a person named it
	Units  int         // the row below the headings that gives their units; 0 where there is none
	Plug   string      // the connector of wires that their colours alone tell apart; "" of all other tables
	Prefix string      // of the names of the connectors that the rows name
	Nodes  bool        // its nets run from node to node of a bus, the list does not say how
	Listed bool        // its rows are the points of a list

	Poles      []string // that the heading of the cavities names: a row tells a wire of each
	EachColour bool     // a row that names several cavities has a colour for each

	Group  value.Gauge     // the size and the colour that such a heading says of them
	Near   string          // the end that a heading between the rows names for those below it; "" where none does
	Far    string          // the far end that one names for rows that say where wires start and not where they go
	Ranges bool            // "10-12" is three cavities, not the name of one
	Named  map[string]bool // cavities that stand alone in a cell
}

// isWholeEnd reports whether a text is a connector, a colon and its cavity, and nothing else.
func isWholeEnd(text string) bool {
	connector, pin, ok := strings.Cut(text, ":")
	return ok && name.IsDesignator(connector) && name.IsCavity(pin)
}

// IsText is a row that holds one text and no data.
func IsText(r table.Row) bool {
	n, first := r.Filled()
	switch {
	case n != 1:
		return false
	case r.Prose:
		return true
	case len(r.Cells) == 1:
		return len(first) > 3 || strings.Contains(first, " ")
	case isWholeEnd(first): // "X10:12", a place without a wire
		return false
	case len(first) > 3: // a cavity alone is short: "GND", "30", "A 12"
		letters := strings.Count(strings.Map(func(r rune) rune {
			if unicode.IsLetter(r) {
				return 'a'
			}
			return r
		}, first), "a")
		return len(first) > 5 || letters > 3 || letters > 2 && strings.Contains(first, " ")
	}
	return false
}
