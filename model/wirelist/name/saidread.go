package name

import (
	"fmt"
	"maps"
	"slices"
	"strconv"
	"strings"

	"contralay/model/visible"
	"contralay/model/wirelist/table"
)

// refuser makes the error of one key of a recipe.
type refuser = func(key, says, allowed string) error

// decodeColumns reads what columns mean.
func decodeColumns(raw any, refuse refuser, key string) (map[string]Field, error) {
	columns, ok := raw.(map[string]any)
	if !ok {
		return nil, refuse(key, "is no table", `headings and their meanings, "Ader" = "wire"`)
	}
	out := map[string]Field{}
	for _, head := range slices.Sorted(maps.Keys(columns)) {
		meant, _ := columns[head].(string)
		if !slices.Contains(Fields(), Field(meant)) {
			return nil, refuse(key+"."+strconv.Quote(head), fmt.Sprintf("%v is no meaning", columns[head]), fieldList())
		}
		if n, numbered := strings.CutPrefix(head, "#"); numbered && n != "" {
			if k, err := strconv.Atoi(n); err != nil || k < 1 || k > table.DefaultLimits().Columns {
				return nil, refuse(key+"."+strconv.Quote(head), "is no column",
					fmt.Sprintf("#1 to #%d, or a heading", table.DefaultLimits().Columns))
			}
		}
		out[head] = Field(meant)
	}
	return out, nil
}

// mostSaid is how many tables a recipe may speak of (no source).
const mostSaid = 1000

// decodeTables reads what is said about tables.
func decodeTables(raw any, refuse refuser) ([]TableSaid, error) {
	all, ok := raw.([]map[string]any)
	if !ok || len(all) > mostSaid {
		return nil, refuse("table", "is no list of tables", fmt.Sprintf("[[table]], up to %d times", mostSaid))
	}
	var out []TableSaid
	for n, one := range all {
		s := TableSaid{Key: TableKey{Nth: 1}}
		for _, key := range slices.Sorted(maps.Keys(one)) {
			at := fmt.Sprintf("table %d, %s", n+1, key)
			var err error
			switch v := one[key]; key {
			case "sheet":
				s.Key.Sheet, err = shown(v, refuse, at)
			case "title":
				s.Key.Title, err = shown(v, refuse, at)
			case "headings":
				s.Key.Heads, err = shown(v, refuse, at)
			case "read_as":
				s.Reading, err = shown(v, refuse, at)
			case "heading_row":
				s.Heading, err = shown(v, refuse, at)
			case "connector":
				s.Connector, err = oneLine(v, refuse, at)
			case "number":
				nth, ok := v.(int64)
				if s.Key.Nth = int(nth); !ok || nth < 1 || nth > 1_000_000 {
					err = refuse(at, fmt.Sprintf("%v is no number of a table", v), "a whole number from 1 to 1000000")
				}
			case "no_headings":
				s.NoHeading, err = yesOrNo(v, refuse, at)
			case "left_out":
				s.LeftOut, err = yesOrNo(v, refuse, at)
			case "goes_on":
				s.GoesOn, err = yesOrNo(v, refuse, at)
			case "rows_left_out":
				s.Rows, err = texts(v, refuse, at)
			case "columns":
				s.Columns, err = decodeColumns(v, refuse, at)
			default:
				err = refuse(at, "unknown key",
					"columns, connector, goes_on, heading_row, headings, left_out, no_headings, number, read_as, "+
						"rows_left_out, sheet, title")
			}
			if err != nil {
				return nil, err
			}
		}
		out = append(out, s)
	}
	return out, nil
}

// yesOrNo reads true or false.
func yesOrNo(raw any, refuse refuser, key string) (bool, error) {
	v, ok := raw.(bool)
	if !ok {
		return false, refuse(key, fmt.Sprintf("%v is neither", raw), "true, false")
	}
	return v, nil
}

// texts reads a list of texts that are not empty.
func texts(raw any, refuse refuser, key string) (out []string, err error) {
	all, ok := raw.([]any)
	if !ok {
		return nil, refuse(key, fmt.Sprintf("%v is no list", raw), `texts in brackets, ["Spare", "Notes"]`)
	}
	for _, one := range all {
		s, err := shown(one, refuse, key)
		if err != nil {
			return nil, err
		}
		out = append(out, s)
	}
	return out, nil
}

// shown reads a text of a list that a report may show: lists are read without what it must not hold.
func shown(raw any, refuse refuser, key string) (string, error) {
	s, err := oneOf[string](raw, refuse, key)
	if err == nil {
		if says, allowed := visible.Fault(s, false); says != "" {
			return "", refuse(key, says, allowed)
		}
	}
	return s, err
}
