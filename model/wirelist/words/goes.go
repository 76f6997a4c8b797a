package words

// goesWords adds the headings that say in everyday words where a wire goes, or what the thing at its end is, in the languages of Europe:
// "Menee", "Går til", "Kam vede". From memory, no source.
func goesWords() [][3]string {
	return [][3]string{
		{"de", "to", "geht|geht wohin|wohin geht|fuhrt an|geht auf"}, {"fr", "to", "ou va|va ou|aboutit|aboutit a|vers ou|relie"},
		{"es", "to", "adonde|a donde|adonde va|a donde va|va al|llega a"}, {"it", "to", "dove va|va al|arriva a|va a finire"},
		{"pt", "to", "vai|vai a|para onde|para onde vai|liga a|liga em"}, {"nl", "to", "gaat|gaat heen|waarheen|waar naartoe|loopt naar"},
		{"pl", "to", "idzie|idzie do|prowadzi do|dokad idzie|laczy z"}, {"cs", "to", "vede|vede do|vede k|kam vede|jde|jde do|kam jde"},
		{"sv", "to", "gar|gar at|leder till|vart|ansluts till"}, {"da", "to", "gar|forer til|gar mot|hvorhen|gar hen"},
		{"fi", "to", "menee|mihin menee|minne menee|vie|johtaa|kytketaan|toinen paa|vastapaa"},
		{"hu", "to", "megy|hova megy|ide megy|masik vege"}, {"tr", "to", "gider|nereye gider|baglandigi yer"},
		{"ro", "to", "merge la|duce la|unde merge"}, {"ru", "to", "идет|идет к|идет на|куда идет|идёт|идёт к|куда идёт"},
		{"uk", "to", "йде до|куди йде"}, {"hr", "to", "ide|ide u|ide na|ide do|kamo|kamo ide"},
		{"fi", "pin", "kosketin|kosketinnro|kosketin nro"}, {"da", "connector", "hunstik|hanstik|bosning|bossning"},
		{"cs", "connector", "vidlice|protikus"}, {"sv", "connector", "stickpropp|hylsdon|stiftdon"}, {"hr", "connector", "utikac|uticnica"},
		{"hr", "pin", "stezaljka|sponka"}, {"pl", "pin", "bolec|kolek"},
	}
}
