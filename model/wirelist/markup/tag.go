package markup

import "strings"

// tag is one tag of HTML at the front of a text.
type tag struct {
	name  string // in small letters
	attrs string
	close bool
	len   int // 0 where none is
}

// tagAt reads the tag that a text begins with. A sign "<" before a blank, a figure or a dash opens none.
func tagAt(s string) (t tag) {
	at := 1
	if len(s) > 1 && s[1] == '/' {
		t.close, at = true, 2
	}
	end := at
	for end < len(s) && (s[end] >= 'a' && s[end] <= 'z' || s[end] >= 'A' && s[end] <= 'Z' ||
		end > at && (isFigure(s[end]) || s[end] == '-')) {
		end++
	}
	if end == at || end == len(s) || strings.IndexByte(" \t\n/>", s[end]) < 0 {
		return tag{}
	}
	t.name = strings.ToLower(s[at:end])
	if !isTag[t.name] {
		return tag{}
	}
	var quote byte
	for k := end; k < min(len(s), mostTag); k++ {
		switch {
		case quote != 0:
			if s[k] == quote {
				quote = 0
			}
		case s[k] == '"' || s[k] == '\'':
			quote = s[k]
		case s[k] == '<':
			return tag{}
		case s[k] == '>':
			t.attrs, t.len = s[end:k], k+1
			return t
		}
	}
	return tag{}
}

// mostTag is how long a tag is at the most, in bytes; mostCell is how long a cell is whose signs are looked at (no source).
const (
	mostTag  = 4096
	mostCell = 32 << 10
)

func isFigure(c byte) bool { return c >= '0' && c <= '9' }

// attr is the value of an attribute, "" where there is none.
func attr(attrs, name string) string {
	lower := strings.ToLower(attrs)
	for from := 0; ; {
		i := strings.Index(lower[from:], name)
		if i < 0 || len(lower) != len(attrs) {
			return ""
		}
		i += from
		from = i + len(name)
		rest := strings.TrimLeft(attrs[from:], " \t\n")
		if i > 0 && strings.IndexByte(" \t\n\"'", lower[i-1]) < 0 || !strings.HasPrefix(rest, "=") {
			continue
		}
		rest = strings.TrimLeft(rest[1:], " \t\n")
		if rest == "" {
			return ""
		}
		if rest[0] == '"' || rest[0] == '\'' {
			in, _, _ := strings.Cut(rest[1:], rest[:1])
			return in
		}
		in, _, _ := strings.Cut(strings.Join(strings.Fields(rest), " "), " ")
		return in
	}
}

// span is the number that an attribute says, 1 where it says none.
func span(attrs, name string) int { return max(1, number(attr(attrs, name))) }

// number is the number that a text is, up to mostSpan; 0 where it is none.
func number(s string) (n int) {
	for i := range len(s) {
		if !isFigure(s[i]) {
			return 0
		}
		n = min(10*n+int(s[i]-'0'), mostSpan)
	}
	return n
}

// breaksText are the tags that part what stands before and behind them; isTag are all that are known. Nothing writes either.
var (
	breaksText = set(blocks)
	isTag      = set(blocks + " a abbr acronym area b base big button cite code col colgroup del dfn em font g-emoji i img input ins kbd " +
		"label link mark meta nobr nowiki picture q ref s samp small source span strike strong style sub sup svg time tt u var wbr")
)

// blocks are the tags that begin or end a line of what is shown.
const blocks = "address article aside blockquote body br caption center dd details div dl dt figcaption figure footer form h1 h2 h3 h4 " +
	"h5 h6 head header hr html li main nav ol p pre section summary table tbody td tfoot th thead title tr ul"

func set(words string) map[string]bool {
	all := map[string]bool{}
	for w := range strings.FieldsSeq(words) {
		all[w] = true
	}
	return all
}
