package huecodes

import (
	"strings"
	"sync"
)

// A set is the short forms that shops of one language write beside each other.
type set struct {
	lang  string
	hues  map[string]string // the words for a folded short form, in English; several, parted by |, where it has several meanings
	alone bool              // letters of one each, which also stand together: "RN"
}

// sets are all of them. Nothing writes them.
var sets = sync.OnceValue(func() (all []set) {
	for _, w := range written {
		s := set{lang: w.lang, hues: map[string]string{}, alone: w.alone}
		for k, forms := range w.forms {
			for f := range strings.FieldsSeq(forms) {
				if s.hues[f] == "" {
					s.hues[f] = inOrder[k]
				} else {
					s.hues[f] += "|" + inOrder[k]
				}
			}
		}
		for piece := range strings.FieldsSeq(w.more) {
			form, means, _ := strings.Cut(piece, "=")
			s.hues[form] = strings.ReplaceAll(means, "_", " ")
		}
		all = append(all, s)
	}
	return all
})

// inOrder are the words that the short forms below stand for, in their order.
var inOrder = [...]string{"black", "brown", "red", "orange", "yellow", "green", "blue", "violet", "grey", "white", "pink", "light blue"}

// written are the short forms of each language for black, brown, red, orange, yellow, green, blue, violet, grey, white, pink and light
// blue; a form under two colours is the one that no other form of the column has. Common practice of shops, from memory, no source.
var written = []struct {
	lang  string
	alone bool
	forms [len(inOrder)]string
	more  string
}{
	{lang: "nl", forms: [...]string{
		"zw zwa", "br bn brn", "rd ro", "or oj", "ge gl gee", "gn gr", "bl bw", "pa ps vi vt", "gs gr gj", "wt wi",
		"rz rs ro", "lbl lb"},
		more: "gnge=green/yellow gegn=yellow/green grge=green/yellow gegr=yellow/green dbl=dark_blue lgn=light_green"},
	{lang: "es", forms: [...]string{
		"ng ne neg n", "mr ma mn mar", "rj ro rjo", "nr na nj", "am ama", "vd ve ver v", "az azu a", "vi vl vt mo mor",
		"gs gr gri", "bl bc bla b", "rs rosa", "cl ce azc"},
		more: "amvd=yellow/green vdam=green/yellow amve=yellow/green veam=green/yellow"},
	{lang: "fr", forms: [...]string{
		"no nr n", "ma mr br", "rg ro r", "or og", "ja jn j", "ve vt v", "be bl", "vi vl mv", "gr gs", "ba bc bl",
		"rs rse", "bc"}, more: "bg=beige bj=beige vj=green/yellow jv=yellow/green veja=green/yellow jave=yellow/green"},
	{lang: "it", alone: true, forms: [...]string{
		"n", "m", "r", "c", "g", "v", "l", "z", "h", "b", "s", "a"}},
	{lang: "it", forms: [...]string{
		"n ne ner", "m ma mr mar", "r ro rs ros", "ar arn", "g gi gia", "v ve vd ver", "bl blu b", "vi vl vio", "gr gg gri",
		"bi bia b", "rs ra rsa", "az azz ce"}, more: "gv=yellow/green g/v=yellow/green"},
	{lang: "pt", forms: [...]string{
		"pt pr pto", "ca cs mr ct cast", "vm ve vml enc", "lr la lj", "am ama", "vd ver ve", "az azu", "vi rx vl lil",
		"cz ci", "br bc bra", "rs ro", "azc ac"}, more: "vdam=green/yellow amvd=yellow/green"},
	{lang: "fi", forms: [...]string{
		"mu mus", "ru rus", "pu pun", "or ora", "ke kel kelt", "vi vih vihr", "si sin", "vio vl li", "ha har", "va val valk",
		"pi pin roo", "vsi vsin"},
		more: "kevi=yellow/green kv=yellow/green keltavihrea=yellow/green vike=green/yellow kelvih=yellow/green"},
	{lang: "sv", forms: [...]string{
		"sv sva", "br bn bru", "rd ro rod", "or ora", "gu gul", "gn gr gro", "bl bla", "vl li lila vi", "ga gr gra gy",
		"vt vi vit hv", "rs rosa", "lbl"}, more: "gngu=green/yellow gugn=yellow/green grgu=green/yellow gugr=yellow/green"},
	{lang: "da", forms: [...]string{
		"so sv sor", "br bn", "rd ro rod", "or", "gu gul", "gn gr", "bl bla", "li fi vi", "ga gr gra gy", "hv hvi", "rs lr",
		"lbl"}, more: "gngu=green/yellow gugn=yellow/green grgu=green/yellow gugr=yellow/green"},
	{lang: "pl", forms: [...]string{
		"czar cza cn ca cz", "br brz", "czer cze ce cw cz", "po pom pm", "zo zol", "zi zie zl", "ni nie nb", "fi fio",
		"sz sza sy", "bi bia bl", "ro roz rz", "jn"}, more: "zz=yellow/green zozi=yellow/green zizo=green/yellow zo-zi=yellow/green"},
	{lang: "cs", forms: [...]string{
		"c cr cer ce", "h hn hne", "r rd ru rud cv", "o or ora", "zl zlu", "z ze zel", "m mo mod", "f fi fia", "s se sed",
		"b bi bil", "rz ruz", "sm"}, more: "zz=green/yellow zezl=green/yellow zlze=yellow/green"},
	{lang: "hu", forms: [...]string{
		"fk fek", "ba br bar", "pi pir vo", "na nar", "sa sar sg", "zo zol zd", "ke kek kk", "li lil ib", "sz szu", "fe feh fh",
		"rs rozs", "vk"}, more: "zs=green/yellow sz-zo=yellow/green zosa=green/yellow sazo=yellow/green"},
	{lang: "tr", forms: [...]string{
		"sy si siy", "kv kh kah", "kr ki kir", "tr tu tur", "sa sr sar", "ye ys yes", "mv ma mav", "mr mo", "gr gri",
		"by be bey", "pm pe", "am"}},
	{lang: "ro", forms: [...]string{
		"ng ne", "ma mr", "rs ro", "po pt", "ga gb", "ve vd", "abs ab", "vi mv", "gr gi", "al", "rz", "ad"},
		more: "vega=green/yellow gave=yellow/green"},
}

// headingOf are headings of colours in the languages that have short forms.
var headingOf = map[string]string{"en": "Colour", "de": "Farbe", "nl": "Kleur", "es": "Color", "fr": "Couleur", "it": "Colore", "pt": "Cor",
	"fi": "Väri", "sv": "Färg", "da": "Farve", "pl": "Kolor", "cs": "Barva", "hu": "Szín", "tr": "Renk", "ro": "Culoare"}

// Heading is the heading of colours in a language.
func Heading(lang string) string { return headingOf[lang] }

// Languages are the languages whose colours are read, English and German first.
func Languages() []string {
	return []string{"en", "de", "fr", "es", "it", "nl", "pt", "sv", "da", "pl", "cs", "fi", "hu", "ro", "tr"}
}
