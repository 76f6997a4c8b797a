package schema

import (
	"fmt"
	"maps"
	"math"
	"slices"
	"strconv"
	"strings"
	"unicode/utf8"

	"contralay/model/visible"
)

// floatText is the shortest text that reads back as v, always with a decimal
// point. NaN and Inf cannot be in a file that loads; they are written as TOML
// writes them, for Save to refuse.
func floatText(v float64) string {
	switch {
	case math.IsNaN(v):
		return "nan"
	case math.IsInf(v, 1):
		return "inf"
	case math.IsInf(v, -1):
		return "-inf"
	case v == 0:
		return "0.0" // never "-0.0"
	}
	format := byte('f')
	if a := math.Abs(v); a < 1e-6 || a >= 1e21 {
		format = 'e'
	}
	s := strconv.FormatFloat(v, format, -1, 64)
	if strings.ContainsRune(s, '.') {
		return s
	}
	if m, exp, ok := strings.Cut(s, "e"); ok {
		return m + ".0e" + exp
	}
	return s + ".0"
}

// quote writes a TOML basic string. What is no UTF-8 becomes U+FFFD: TOML has no
// way to hold it.
func quote(s string) string {
	if isBare(s) {
		return `"` + s + `"`
	}
	var b strings.Builder
	b.WriteByte('"')
	for _, r := range strings.ToValidUTF8(s, string(utf8.RuneError)) {
		switch {
		case r == '"' || r == '\\':
			b.WriteByte('\\')
			b.WriteRune(r)
		case r == '\n':
			b.WriteString(`\n`)
		case r == '\t':
			b.WriteString(`\t`)
		case r == '\r':
			b.WriteString(`\r`)
		case r < 0x20 || r == 0x7f:
			fmt.Fprintf(&b, `\u%04X`, r)
		default:
			b.WriteRune(r)
		}
	}
	b.WriteByte('"')
	return b.String()
}

// isBare reports whether a text needs no escapes: most do not.
func isBare(s string) bool {
	for i := range len(s) {
		if c := s[i]; c < ' ' || c > '~' || c == '"' || c == '\\' {
			return false
		}
	}
	return true
}

// listText writes a list on one line.
func listText[E any](list []E, text func(E) string) string {
	all := make([]string, len(list))
	for i, e := range list {
		all[i] = text(e)
	}
	return "[" + strings.Join(all, ", ") + "]"
}

// mapText writes an inline table of lists, eachText one of texts.
func mapText(m map[string][]string) string {
	return inlineText(m, func(list []string) string { return listText(list, quote) })
}

func eachText(m map[string]string) string { return inlineText(m, quote) }

// inlineText writes a table on one line, its keys sorted and quoted.
func inlineText[V any](m map[string]V, text func(V) string) string {
	if len(m) == 0 {
		return "{}"
	}
	var all []string
	for _, k := range slices.Sorted(maps.Keys(m)) {
		all = append(all, quote(k)+" = "+text(m[k]))
	}
	return "{ " + strings.Join(all, ", ") + " }"
}

// describe says what a decoded value is, for a person.
func describe(raw any) string {
	switch v := raw.(type) {
	case string:
		return "the text " + visible.Quoted(Short(v))
	case bool:
		return strconv.FormatBool(v)
	case int64:
		return "the whole number " + strconv.FormatInt(v, 10)
	case float64:
		if math.IsNaN(v) || math.IsInf(v, 0) {
			return floatText(v) + ", which is not a finite number"
		}
		return "the number " + floatText(v)
	case []any:
		if len(v) == 0 {
			return "an empty list"
		}
		return "a list"
	case []map[string]any:
		return "a list of tables"
	case map[string]any:
		return "a table"
	}
	return "a date or time"
}

// Short cuts a text that would fill the screen.
func Short(s string) string {
	const most = 40
	r := []rune(s)
	if len(r) <= most {
		return s
	}
	return string(r[:most]) + "…"
}
