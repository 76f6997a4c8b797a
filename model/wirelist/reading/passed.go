package reading

import (
	"slices"

	"contralay/model/wirelist/name"
	"contralay/model/wirelist/shape"
	"contralay/model/wirelist/table"
	"contralay/model/wirelist/words"
)

// passed reads the cavities of a bulkhead in a list of both ends, a column headed by the bulkhead itself that stands between the two:
// each wire goes through one of its cavities.
//
//	From (cab) | Firewall | To (engine) | Signal
//	Dash 3     | A        | Sender 1    | Oil
func passed(l *look) []shape.Column {
	from, to := l.Holds(l.Cols, name.FieldFrom), l.Holds(l.Cols, name.FieldTo)
	if from < 0 || to < 0 || l.Has(l.Cols, name.FieldVia, name.FieldRun) {
		return nil
	}
	at := -1
	for i := min(from, to) + 1; i < max(from, to); i++ {
		c, p := &l.Cols[i], &l.Prof[i]
		free := c.Field == name.FieldKeep || c.Field == name.FieldConnector || c.Field == name.FieldPin && c.Of == c.Head && c.Head != ""
		if c.Given || p.Filled == 0 || !free || !saysPassage(c.Head) {
			continue
		}
		if at >= 0 || !p.All(p.Cavities) || p.Filled < 2 || !p.Unique() || 2*p.Filled < len(l.Src.Rows) {
			return nil
		}
		at = i
	}
	if at < 0 {
		return nil
	}
	cols := slices.Clone(l.Cols)
	cols[at].Field, cols[at].Of = name.FieldVia, shape.DeviceOf(cols[at].Head)
	return cols
}

// saysPassage reports whether a heading is of a connector that wires go through.
func saysPassage(head string) bool {
	w := name.Words(name.WithoutBrackets(table.Fold(head)))
	return len(w) > 0 && len(w) < 5 && slices.ContainsFunc(w, words.IsPassage)
}
