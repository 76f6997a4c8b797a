package prose

import (
	"slices"
	"strings"
	"unicode"

	"contralay/model/wirelist/table"
)

// IsGreeting reports whether a line greets whom a letter goes to, "Hello both", "Dear Ben", or ends it, "Kind regards": it names nothing.
// "Hi beam" is no greeting: what follows is a name, or a word for several people. From memory, no source.
func IsGreeting(text string) bool {
	if IsMailHead(text) {
		return true
	}
	const most = 4 // words (no source)
	all := strings.Fields(strings.TrimRight(text, ",.!"))
	if len(all) == 0 || len(all) > most {
		return false
	}
	word := func(i int) string { return table.Fold(strings.Trim(all[i], ",.!")) }
	switch word(0) {
	case "hello", "hi", "hey", "hallo", "moin", "servus", "bonjour", "bonsoir", "salut", "hola", "ciao", "hej", "hei", "ahoj", "ola",
		"czesc":
		return len(all) == 1 || unicode.IsUpper([]rune(all[1])[0]) && all[1] != strings.ToUpper(all[1]) ||
			slices.Contains([]string{"all", "both", "there", "everyone", "everybody", "team", "folks", "again", "guys", "zusammen", "alle",
				"ihr", "a", "tous", "todos", "tutti", "alla"}, word(1))
	case "dear", "liebe", "lieber", "cher", "chere", "chers", "querido", "querida", "caro", "cara", "cari", "geachte",
		"estimado", "estimada", "gentile", "egregio", "kara", "kare":
		return len(all) > 1
	case "good", "guten", "buenos", "buenas", "goede", "god", "sehr":
		return len(all) > 1 && slices.Contains([]string{"morning", "day", "afternoon", "evening", "tag", "morgen", "abend", "dias",
			"tardes", "dag", "geehrte", "geehrter", "geehrten"}, word(1))
	case "buongiorno", "buonasera", "regards", "cheers", "thanks", "thank", "grusse", "gruss", "saludos", "cordialement", "saluti":
		return len(all) < 3
	case "kind", "best", "beste", "warm", "viele", "schone":
		return len(all) > 1 && slices.Contains([]string{"regards", "wishes", "grusse"}, word(1))
	}
	return false
}

// IsMailHead reports whether a line is of the head of a letter: "From: Ines", "Subject: the loom".
func IsMailHead(text string) bool {
	word, says, ok := strings.Cut(table.Fold(text), ": ")
	if !ok || says == "" {
		return false
	}
	switch word {
	case "subject", "betreff", "oggetto", "objet", "asunto", "onderwerp", "cc", "sent", "gesendet":
		return true
	case "from", "to", "von", "an", "da", "van", "aan":
		return !strings.ContainsAny(says, "0123456789")
	}
	return false
}
