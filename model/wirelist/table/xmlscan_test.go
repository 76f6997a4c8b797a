package table

import (
	"encoding/xml"
	"fmt"
	"io"
	"math/rand/v2"
	"strings"
	"testing"
	"testing/iotest"
)

// scanned is all that a part holds, as our scanner or the library alone says it.
func scanned(from io.Reader, ours bool) string {
	s := newScanner(strings.NewReader(""))
	if s.more = xml.NewDecoder(from); ours {
		s = newScanner(from)
	}
	var b strings.Builder
	for {
		t, err := s.next()
		if err != nil {
			fmt.Fprintf(&b, "%v", err)
			return b.String()
		}
		if t.kind != other {
			fmt.Fprintf(&b, "%d %s %q %q\n", t.kind, t.name, t.attrs, t.text)
		}
	}
}

// Whatever a part holds, the scanner reads the same of it as the library, and says the same is wrong with it.
func TestScannerAndLibrary(t *testing.T) {
	const sheet = `<?xml version="1.0" encoding="UTF-8" standalone="yes"?>` + "\r\n" + `<x:sst a:b="1" c='2"'><row r="12" spans="1:3">` +
		`<c r="A12" t="s" s="3"><v>17</v></c>` + "\n" + `<c r="B12"><f>A1&amp;"x"&lt;3</f><v/></c>` +
		`<is><t xml:space="preserve"> Länge &gt; 2 </t></is>` +
		"</row>\r\n\t<mergeCell ref=\"A1:B2\" /></x:sst  >\r"
	texts := []string{sheet, "", "<", "a", "<a", "<a>", "</a>", "<a/", "<a/>x", "<a b>", "<a b = '1'>",
		"<a b='1'c='2'>", "<a b='<'>", "<a b='&amp;'>",
		"<a:b:c/>", "<:a/>", "<a:/>", "<1/>", "<é/>", "<a>]]></a>", "<a>]]&gt;</a>", "<a>\x01</a>", "<a>\xff</a>",
		"<a>\uFFFE</a>", "<a>&#65;</a>",
		"<a>&x;</a>", "<a>&amp</a>", "<a>x", "<a><!-- - --></a>", "<a><![CDATA[x]]></a>", "<!DOCTYPE a>", "<?xml version='1.1'?><a/>",
		"<?xml version='1.0' encoding='latin1'?><a/>", "\ufeff<a/>", "<a>\r\r\n\n</a>", "<a b='\n'/>",
		"<a b='é'/>", "</a b>", "</ a>", "<a\n/>"}
	r := rand.New(rand.NewPCG(1, 2))
	for range 600 {
		b := []byte(sheet)
		for range 1 + r.IntN(2) {
			at := r.IntN(len(b))
			switch r.IntN(3) {
			case 0:
				b[at] = "<>/&;\"' \r\x00]=:é"[r.IntN(15)]
			case 1:
				b = append(b[:at], b[min(len(b), at+1+r.IntN(4)):]...)
			default:
				b = b[:at+1]
			}
		}
		texts = append(texts, string(b))
	}
	for _, text := range texts {
		want := scanned(strings.NewReader(text), false)
		if got := scanned(strings.NewReader(text), true); got != want {
			t.Fatalf("%q:\n%s\nwant\n%s", text, got, want)
		}
		if got := scanned(iotest.OneByteReader(strings.NewReader(text)), true); got != want {
			t.Fatalf("%q byte by byte:\n%s\nwant\n%s", text, got, want)
		}
	}
	long := "<a>" + strings.Repeat("<c r='A1'><v>12345</v></c>\n", 20_000) + "<b>" + strings.Repeat("x", 3*mostToken) + "</b></a><"
	if got, want := scanned(strings.NewReader(long), true), scanned(strings.NewReader(long), false); got != want {
		t.Errorf("a long part: %.200s", got[max(0, len(got)-200):])
	}
}
