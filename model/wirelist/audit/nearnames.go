package audit

import (
	"slices"
	"strings"

	"contralay/model/wirelist/draft"
	"contralay/model/wirelist/table"
)

// nearNames names the rows with an end at a connector that one row alone names, nearly as another one is called: a letter could be wrong
// in it.
//
//	Connector | Pin
//	J1        | 1
//	J1        | 2
//	JI        | 3
func (a *auditor) nearNames() {
	if len(a.im.Terms) > mostNear {
		return
	}
	of := map[*draft.Term][]*draft.Item{}
	var terms []*draft.Term
	for _, it := range a.im.Items {
		for _, e := range []draft.End{it.From, it.To} {
			if e.Term == nil || !e.Term.Name.Set && e.Term.ID == "" || it.Wire < 0 {
				continue
			}
			if of[e.Term] == nil {
				terms = append(terms, e.Term)
			}
			of[e.Term] = append(of[e.Term], it)
		}
	}
	rows := map[table.Place][]table.Row{}
	whats := map[table.Place][]string{}
	var order []table.Place
	for _, t := range terms {
		if len(of[t]) != 1 || t.Unsaid {
			continue
		}
		at := slices.IndexFunc(terms, func(o *draft.Term) bool {
			return o != t && !o.Unsaid && len(of[o]) > 1 && isNear(table.Fold(called(t)), table.Fold(called(o)))
		})
		if at < 0 {
			continue
		}
		place := of[t][0].Place
		row := table.Row{Line: place.Row}
		place.Row, place.Column = 0, ""
		if rows[place] == nil {
			order = append(order, place)
		}
		rows[place], whats[place] = append(rows[place], row), append(whats[place], called(t)+" beside "+called(terms[at]))
	}
	for _, at := range order {
		a.doubt("a connector called nearly as another", at, some(whats[at]), "taken for another one; look whether a letter of it is wrong",
			rows[at])
	}
}

// mostNear is how many connectors are held against each other (no source).
const mostNear = 500

// called is the name of a connector.
func called(t *draft.Term) string {
	if t.Name.Set {
		return t.Name.V
	}
	return t.ID
}

// isNear reports whether two folded names are one but for letters that look like digits, or but for one letter of a long word, or the
// first is the designator that the second ends with.
func isNear(x, y string) bool {
	if x == y {
		return false
	}
	alike := strings.NewReplacer("l", "1", "i", "1", "o", "0", " ", "", "-", "", "_", "")
	if p, q := alike.Replace(x), alike.Replace(y); p == q && strings.ContainsAny(p, "0123456789") {
		return true
	}
	a, b := strings.Fields(x), strings.Fields(y)
	if len(a) == 1 && len(b) > 1 && b[len(b)-1] == x && strings.ContainsAny(x, "0123456789") && x[0] > '9' {
		return true // "Hub J1-4 / J1-5" names the hub once
	}
	if len(a) != len(b) {
		return false
	}
	near := false
	for i := range a {
		switch {
		case a[i] == b[i]:
		case near || !isSlip(a[i], b[i]):
			return false
		default:
			near = true
		}
	}
	return near
}

// isSlip reports whether two words of six letters or more differ in one letter, one left out or two that changed places.
func isSlip(a, b string) bool {
	const least = 6 // letters (no source)
	if len(a) > len(b) {
		a, b = b, a
	}
	if len(a) < least || len(b)-len(a) > 1 || strings.ContainsAny(a+b, "0123456789") || strings.TrimSuffix(b, "s") == a {
		return false
	}
	front := 0
	for front < len(a) && a[front] == b[front] {
		front++
	}
	back := 0
	for back < len(a)-front && a[len(a)-1-back] == b[len(b)-1-back] {
		back++
	}
	left := len(a) - front - back
	return len(b) > len(a) && left == 0 || len(a) == len(b) && (left == 1 ||
		left == 2 && a[front] == b[front+1] && a[front+1] == b[front])
}
