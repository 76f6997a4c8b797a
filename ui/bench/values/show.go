package values

import (
	"fmt"
	"maps"
	"slices"
	"strconv"
	"strings"

	"contralay/calc/query/why"
	"contralay/model"
	"contralay/model/catalogue"
	"contralay/model/file/schema"
	"contralay/model/unit"
	"contralay/model/visible"
	"contralay/ui/bench/desk"
	"contralay/ui/bench/values/label"
	"contralay/ui/bench/words"
	"contralay/ui/paper"
)

// Values as they are shown and typed.

// isLength reports whether a number is a length, which is in mm or inches as the screen is.
func isLength(k schema.Key) bool { return k.Unit == "mm" }

// unitOf is what stands behind a value of a key.
func unitOf(m *desk.Model, k schema.Key, l label.Label) string {
	switch {
	case isLength(k):
		return m.Sys.Name()
	case l.Unit != "":
		return l.Unit
	case k.Unit == "°C":
		return "C"
	}
	return k.Unit
}

// numberText is a number without its unit, as fine as it was given.
func numberText(m *desk.Model, k schema.Key, v float64) string {
	if isLength(k) && m.Sys == unit.Inch {
		return words.Trim(unit.RoundHalfUp(v/unit.MillimetrePerInch, 0.001))
	}
	return words.Trim(v)
}

// parse reads a number as it is typed on this screen, in the unit of the file.
func parse(m *desk.Model, k schema.Key, text string) (float64, error) {
	if isLength(k) {
		v, err := m.Sys.Parse(text)
		return float64(v), err
	}
	return unit.ParseNumber(text)
}

// shown is a value of a key as a person reads it; nil is "-".
func shown(m *desk.Model, k schema.Key, l label.Label, value any) string {
	with := func(text string) string { return strings.TrimSpace(text + " " + unitOf(m, k, l)) }
	switch v := value.(type) {
	case nil:
		return "-"
	case bool:
		return words.Either(v, "yes", "no")
	case float64:
		return with(numberText(m, k, v))
	case int64:
		return with(strconv.FormatInt(v, 10))
	case string:
		return wordText(k.Name, v)
	case []any:
		return listText(m, k, l, v)
	case map[string]any:
		return tableText(m, k, v)
	}
	return fmt.Sprint(value)
}

func wordText(key, v string) string {
	switch {
	case v == "":
		return "none"
	case key == "colour", key == "colour_stock":
		return paper.Colour(v)
	case key == "size", key == "size_min":
		return paper.Size(&model.Wire{Size: v})
	}
	return visible.Note(v)
}

func listText(m *desk.Model, k schema.Key, l label.Label, all []any) string {
	if len(all) == 0 {
		return "none"
	}
	if k.Kind == schema.KindPair && len(all) == 2 {
		a, aIs := all[0].(float64)
		b, bIs := all[1].(float64)
		if aIs && bIs && k.Name == "tolerance_mm" {
			return fmt.Sprintf("-%s +%s %s", numberText(m, k, a), numberText(m, k, b), unitOf(m, k, l))
		}
		return fmt.Sprintf("%s to %s %s", numberText(m, k, a), numberText(m, k, b), unitOf(m, k, l))
	}
	var out []string
	for _, v := range all {
		switch v := v.(type) {
		case float64:
			out = append(out, numberText(m, k, v))
		case string:
			out = append(out, wordText("", v))
		}
	}
	if k.Kind == schema.KindNumbers {
		return words.Few(out) + " " + unitOf(m, k, l)
	}
	return words.Few(out)
}

// tableText is a table of lists, or a table on one line, in short.
func tableText(m *desk.Model, k schema.Key, all map[string]any) string {
	if len(all) == 0 {
		return "none"
	}
	var out []string
	if k.Kind == schema.KindMap {
		for _, name := range slices.Sorted(maps.Keys(all)) {
			list, _ := all[name].([]any)
			out = append(out, wordText("", name)+": "+listText(m, schema.Key{Kind: schema.KindIDs}, label.Label{}, list))
		}
		return strings.Join(out, "; ")
	}
	if k.Kind == schema.KindEach {
		for _, name := range slices.Sorted(maps.Keys(all)) {
			one, _ := all[name].(string)
			out = append(out, wordText("", name)+" to "+wordText("", one))
		}
		return strings.Join(out, ", ")
	}
	for _, in := range k.Keys {
		if v, given := all[in.Name]; given {
			out = append(out, shown(m, in, label.Label{}, v))
		}
	}
	return strings.Join(out, ", ")
}

// reasons is what W says of a number of the file.
func reasons(m *desk.Model, k schema.Key, l label.Label, value any, by string) []desk.Reason {
	measure := why.Times
	switch k.Unit {
	case "mm":
		measure = why.Length
	case "A":
		measure = why.Amperes
	case "V":
		measure = why.Volts
	case "°C":
		measure = why.Celsius
	case "s":
		measure = why.Seconds
	}
	var all []float64
	switch v := value.(type) {
	case float64:
		all = append(all, v)
	case []any:
		for _, one := range v {
			if f, is := one.(float64); is {
				all = append(all, f)
			}
		}
	}
	from := desk.Given
	if by != "" {
		from = catalogue.Origin{Source: by, Standing: catalogue.House}
	}
	var out []desk.Reason
	for _, v := range all {
		out = append(out, desk.Reason{Made: func() (why.Why, bool) {
			return why.Stated(l.Says, "this is the value itself", v, measure, from), true
		}})
	}
	return out
}
