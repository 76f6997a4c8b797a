package noted

import (
	"strings"

	"contralay/model/wirelist/name"
	"contralay/model/wirelist/titleline"
)

// A gap in a title parts it in two cells, as those of a table are.
//
//	Plug A   13 way, at the drawbar
//	1   yellow   1.5   left indicator

// gapped puts the two cells of such a title together: the name of a plug, and how many cavities it has.
func (n *notes) gapped() {
	for i := range n.rows {
		r := &n.rows[i]
		if k, first := r.Filled(); k != 2 || r.Level > 0 || len(first) > mostTitle || !name.SaysConnector(first) {
			continue
		}
		var cells []string
		for _, c := range r.Cells {
			if c != "" {
				cells = append(cells, c)
			}
		}
		w := strings.Fields(cells[0])
		switch at := len(w) - 2; {
		case titleline.CountsWays(cells[1]):
			n.set(i, cells[0]+" ("+cells[1]+")")
		case at > 0 && titleline.CountsWays(strings.Join(w[at:], " ")): // a comma stands behind it
			n.set(i, strings.Join(w[:at], " ")+" ("+strings.Join(w[at:], " ")+", "+cells[1]+")")
		}
	}
}

// mostTitle is how long the name of a plug in such a title is, in bytes (no source).
const mostTitle = 30
