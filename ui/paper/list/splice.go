package list

import (
	"fmt"
	"strings"

	"contralay/calc/sheet"
	"contralay/model/unit"
)

// Becomes is a splice as whoever lays its wires needs it: where it lies and which wires go
// on as which.
func Becomes(s *sheet.Sheet, sys unit.System, i int) string {
	sp, c := &s.H.Splices[i], &s.Splices[i]
	lies := "at the centre of " + sp.At
	if sp.Toward.V != "" {
		lies = fmt.Sprintf("%s %s from %s along %s", sys.Length(sp.OffsetMM.V), sys.Name(), sp.At, sp.Toward.V)
	}
	says := fmt.Sprintf("splice %s, %s", sp.ID, lies)
	one, more := c.Near, c.Far
	if len(more) == 1 {
		one, more = more, one
	}
	switch {
	case len(one) == 0 || len(more) == 0:
		return says
	case len(one) == 1 && len(more) == 1:
		return fmt.Sprintf("%s: wire %s becomes wire %s", says, idsOf(s, one), idsOf(s, more))
	case len(one) == 1:
		return fmt.Sprintf("%s: wire %s becomes %d wires, %s", says, idsOf(s, one), len(more), idsOf(s, more))
	}
	return fmt.Sprintf("%s: wires %s become wires %s", says, idsOf(s, one), idsOf(s, more))
}

// idsOf is wires by their ids, in words.
func idsOf(s *sheet.Sheet, all []int) string {
	var ids []string
	for _, k := range all {
		ids = append(ids, s.H.Wires[k].ID)
	}
	if n := len(ids); n > 1 {
		return strings.Join(ids[:n-1], ", ") + " and " + ids[n-1]
	}
	return strings.Join(ids, "")
}
