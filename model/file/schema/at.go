package schema

import (
	"strconv"
	"strings"
)

// Step is one table on the way to a record: which of a list, from 0; 0 where there is one only.
type Step struct {
	Table string
	Index int
}

// At is where a record is: branch 2, then its layer 0. The empty one is the file itself.
type At []Step

// In is a record of a table inside this one.
func (a At) In(table string, index int) At { return append(a[:len(a):len(a)], Step{table, index}) }

// Up is the record that this one is in.
func (a At) Up() At { return a[:max(0, len(a)-1)] }

// Last is its own step.
func (a At) Last() Step {
	if len(a) == 0 {
		return Step{}
	}
	return a[len(a)-1]
}

// Table is the name of its table: "branch.layer".
func (a At) Table() string {
	names := make([]string, len(a))
	for n, s := range a {
		names[n] = s.Table
	}
	return strings.Join(names, ".")
}

// String is the place as ParseAt reads it: "branch[2].layer[0]".
func (a At) String() string {
	all := make([]string, len(a))
	for n, s := range a {
		all[n] = s.Table + "[" + strconv.Itoa(s.Index) + "]"
	}
	return strings.Join(all, ".")
}

// ParseAt reads what String wrote.
func ParseAt(text string) (At, bool) {
	if text == "" {
		return nil, true
	}
	var out At
	for _, part := range strings.Split(text, ".") {
		table, rest, ok := strings.Cut(part, "[")
		n, err := strconv.Atoi(strings.TrimSuffix(rest, "]"))
		if !ok || err != nil || n < 0 || table == "" {
			return nil, false
		}
		out = append(out, Step{table, n})
	}
	return out, true
}
