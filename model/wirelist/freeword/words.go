package freeword

// IsBlank reports whether a text says that a cavity has no wire.
func IsBlank(folded string) bool {
	switch withoutStaying(folded) {
	case "n/c", "nc", "n.c", "n/a", "n.a", "not connected", "no connection", "no connect", "do not connect", "dnc",
		"blank", "blanked",
		"empty", "vacant", "unused", "not used", "do not use", "none", "no wire", "no contact", "no pin", "free",
		"nothing", "nothing in it", "no core", "no core in it", "no conductor",
		"cavity sealed", "cavity plugged", "sealed", "position sealed", "no cavity",
		"not fitted", "nf", "n/f", "unfitted", "not populated", "unpopulated", "do not populate", "dnp", "-", "--", "---",
		"plug", "plugged", "seal plug", "sealing plug", "blanking plug", "blank plug", "dummy plug", "filler plug", "cavity plug",
		"plugs", "seal plugs", "sealing plugs", "blanking plugs", "dummy plugs", "filler plugs", "cavity plugs",
		"plugged off", "blocked", "blocked off", "blocked with sealing plug", "blocked with plug", "blindstopfen gesetzt",
		"empty hole", "empty cavity", "empty pin", "empty way", "free hole", "free cavity", "free pin", "unused hole", "unused cavity",
		"unused pin", "spare term", "spare terminal",
		"n.b", "n. b", "nicht belegt", "nichts", "nicht bestuckt", "nicht verbunden", "nicht verwenden", "nicht benutzt",
		"unbelegt", "unbenutzt", "frei",
		"leer", "blindstopfen",
		"libre", "vide", "non connecte", "non utilise", "ne pas utiliser", "non monte", "inutilise", "bouchon", "obturateur",
		"sin conexion", "no conectado", "no usado", "no usar", "sin usar", "vacio", "tapon",
		"libero", "libera", "libres", "liberi", "libere", "non connesso", "non usato", "non usare", "vuoto", "tappo",
		"wolny", "wolne", "nie podlaczony", "nie podlaczone", "niepodlaczony", "nieuzywany", "nieuzywane", "pusty",
		"vrij", "niet aangesloten", "niet gebruikt", "leeg", "volny", "volne", "volna", "nezapojeno", "nezapojen", "nepouzito",
		"ledig", "oanvand", "ej anvand", "anvands ej", "ej ansluten", "ikke brukt", "ikke tilkoblet", "ikke tilsluttet", "ubrugt",
		"livre", "nao ligado", "nao usado", "sem uso", "vapaa", "ei kaytossa", "ei kytketty", "szabad", "ures", "nincs bekotve",
		"bos", "kullanilmiyor", "neconectat", "未使用", "空き", "空", "未用", "不用", "未接続", "なし", "미사용",
		"sin uso", "sin utilizar", "no utilizado", "no utilizada", "no se usa", "sin conectar", "nao utilizado", "nao utilizada",
		"sem ligacao", "non utilisee", "pas utilise", "inutilisee", "pas connecte", "ungenutzt", "nicht genutzt", "unbeschaltet",
		"nicht angeschlossen", "non utilizzato", "non utilizzata", "inutilizzato", "non collegato", "non in uso", "ongebruikt",
		"niet in gebruik", "anvands inte", "ikke i bruk", "ikke i brug", "nie uzywany", "nie uzywane", "not in use", "not wired",
		"unbesetzt", "nicht verdrahtet", "ohne draht", "nicht beschaltet", "non branche", "pas branche", "non raccorde", "inoccupe",
		"desocupado", "sin cable", "niet bezet", "onbezet", "nao conectado", "sem conexao", "vago", "vazio", "niewykorzystany", "puste",
		"brak", "neobsazeno", "neobsazen", "nepouzit", "nevyuzito", "ej inkopplad", "ikke forbundet", "fri", "tyhja", "nem hasznalt",
		"kullanilmaz", "bagli degil",
		"ubrukt", "ikke brugt", "ubenyttet", "ikke anvendt", "ei kayteta", "kayttamaton", "prazdny", "prazdne", "prazdna", "voľny", "voľne",
		"nepouzite", "niewykorzystane", "liber", "nefolosit", "neutilizat", "prazno", "neiskoristeno", "ελευθερο", "ελεύθερο", "κενο",
		"κενό",
		"unconnected", "ne koristi se", "slobodno", "prosto", "вільний", "не використовується",
		"свободно", "свободен", "не используется", "не подключен", "не подключено", "пусто",
		"unallocated", "unassigned", "unoccupied", "unutilised", "unvergeben", "unzugeordnet", "inattribue", "nieprzypisany",
		"nieprzypisane", "nieprzydzielony", "nieprzydzielone", "niezajety", "niezajete", "nepriradeno", "neprirazeno", "neprirazen",
		"nepriradene", "nepridelen", "neprideleno", "nealocat", "neatribuit", "nedodijeljeno", "otilldelad", "utildelt", "atanmamis",
		"незадействован", "незадействовано", "未割当", "未割り当て", "未割付", "未分配", "未连接", "未連接", "无连接", "空脚", "悬空",
		"미할당", "미연결", "no wire fitted", "no contact fitted", "no terminal fitted", "non cable", "pas cable":
		return true
	}
	return isDenied(folded)
}

// IsReserved reports whether a text says that a cavity is kept for something.
func IsReserved(folded string) bool {
	switch folded {
	case "reserved", "reserved for future use", "for future use", "future use", "future", "reserviert", "vorgehalten", "reservee",
		"reservado", "reservada", "riservato", "riservata", "gereserveerd", "reserverad", "reserveret", "zarezerwowane",
		"reservert", "reserverat", "zarezerwowany", "zarezerwowana", "rezervovano", "rezervovany", "rezervovana", "vyhrazeno", "varattu",
		"avsatt", "afsat", "fenntartva", "fenntartott", "ayrilmis", "rezervat", "rezervirano", "зарезервировано", "зарезервирован",
		"зарезервовано", "κρατημενο", "κρατημένο", "予約", "预留", "預留", "예약":
		return true
	}
	return false
}

// IsSpare reports whether a text says that a wire is laid for later.
func IsSpare(folded string) bool {
	switch folded {
	case "spare", "spares", "spare wire", "spare tail", "spare end", "spare lead", "wired spare", "spare hole", "spare cavity",
		"spare way", "spare pin", "spare position", "spare slot", "spare terminal", "spare contact", "reserve", "reserveader",
		"reserveleitung", "rechange", "fil de reserve", "fil en attente", "repuesto", "de repuesto",
		"reserva", "de reserva", "riserva", "di riserva", "en reserve", "en reserva", "in riserva", "in reserve", "als reserve",
		"cap and stow", "cap & stow", "capped and stowed", "capped & stowed", "coil and stow", "coil & stow", "coiled and stowed", "stowed",
		"scorta", "di scorta", "fri leder", "freie ader", "vrije ader", "hilo libre", "fil libre", "rezerwa", "zapas",
		"zapasowy", "rezerva", "reserv", "varalla", "varaus", "vara", "tartalek", "yedek", "резерв",
		"予備", "备用", "備用", "예비", "pricuva", "εφεδρικο", "εφεδρικό":
		return true
	}
	return false
}
