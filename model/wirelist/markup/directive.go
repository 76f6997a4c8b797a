package markup

import "strings"

// Tables that reStructuredText has as lists, or as separated values, below a line that says so.
//
//	.. list-table:: Lid plug            .. csv-table:: Lid plug
//	   :header-rows: 1                     :header: "Pin", "Lamp"
//
//	   * - Pin                             1, plus
//	     - Lamp                            2, minus
//	   * - 1
//	     - plus

func directive(t *reader, i int) (rows []Row, n int) {
	l := strings.TrimSpace(t.lines[i])
	kind, caption, ok := strings.Cut(strings.TrimPrefix(l, ".. "), "::")
	kind = strings.TrimSpace(kind) // ".. list-table ::"
	if caption = restMarks().plain(caption); !ok || kind != "list-table" && kind != "csv-table" {
		return nil, 0
	}
	var all []drawn
	heads := 0
	deep := len(t.lines[i]) - len(strings.TrimLeft(t.lines[i], " "))
	last := 0
	for k := i + 1; k < len(t.lines); k++ {
		line := t.lines[k]
		l := strings.TrimSpace(line)
		if l == "" {
			continue
		}
		if len(line)-len(strings.TrimLeft(line, " \t")) <= deep {
			break
		}
		last = k
		name, said, option := strings.Cut(strings.TrimPrefix(l, ":"), ":")
		switch {
		case l[0] == ':' && option && len(all) == 0 || l[0] == ':' && option && name == "header":
			switch name {
			case "header":
				all, heads = append(all, drawn{line: k + 1, cells: partedCells(strings.TrimSpace(said), ',')}), 1
			case "header-rows":
				heads = number(strings.TrimSpace(said))
			}
		case kind == "csv-table":
			all = append(all, drawn{line: k + 1, cells: partedCells(l, ',')})
		case strings.HasPrefix(l, "* -"):
			all = append(all, drawn{line: k + 1, cells: []drawnCell{{text: l[3:]}}})
		case (strings.HasPrefix(l, "- ") || l == "-") && len(all) > 0:
			d := &all[len(all)-1]
			d.cells = append(d.cells, drawnCell{text: l[1:]})
		case len(all) > 0:
			c := &all[len(all)-1].cells[len(all[len(all)-1].cells)-1]
			c.text += " " + strings.TrimPrefix(l, "| ")
		}
	}
	for k := range all {
		all[k].head = k < heads
		for c := range all[k].cells {
			all[k].cells[c].text = restMarks().plain(all[k].cells[c].text)
		}
	}
	if len(all) < 2 {
		return nil, 0
	}
	return spread(all, caption, i+1), last - i + 1
}
