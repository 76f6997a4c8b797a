package values

// The labels of the record of what was built.

var buildLabels = map[string]label{
	"serial":   {says: "serial", does: "The number of the harness that was built"},
	"revision": {says: "revision", does: "The revision of the sheet that it was built from", from: letters},
	"begun":    {says: "begun", does: "The day on which it was begun"},
	"note":     {says: "note", does: "From one hand to the next"},
	"goes_by":  {says: "corrections", item: "correction", does: "Corrections of the shop that its sheet was begun with"},
	"done":     {says: "done, by key alone", item: "step", does: "Steps that older files ticked, without what each made"},
}

var tickedLabels = map[string]label{
	"key":   {says: "step", does: "The step of the run that was ticked", from: runSteps},
	"at":    {says: "when", does: "Day and time"},
	"by":    {says: "by", does: "Number or name of the person", from: people},
	"what":  {says: "what was made", does: "As the sheet had it when the step was ticked"},
	"sheet": {says: "what the sheet had", does: "What the sheet had when somebody kept the step as it was built"},
	"undone": {says: "undone because", does: "A step with a reason here counts no more",
		from: names("crossed", "wrong wire", "wrong length", "damaged")},
}

var whatLabels = map[string]label{
	"spec":        {says: "spec", does: "Of a wire", from: specs},
	"size":        {says: "size", does: "Of a wire", from: sizes},
	"colour":      {says: "colour", does: "Of a wire", from: colours},
	"part":        {says: "part", does: "Of a splice, a cover, a moulded part"},
	"place":       {says: "place", does: "Of a splice: its breakout and branch"},
	"hand":        {says: "turns", does: "Of a layer: LH, RH or straight"},
	"members":     {says: "pieces", item: "piece", does: "Of a unit, a splice, a layer, a mix or a hold", order: true},
	"ends":        {says: "cavities filled", item: "cavity", does: "Each cavity and what is in it: A 101", order: true},
	"fillers":     {says: "fillers", does: "How many pieces only keep the layer round"},
	"filler_mm":   {says: "filler OD", does: "How thick they were", first: 1.1, step: 0.01},
	"bind_mm":     {says: "binder", does: "What tape or thread added", step: 0.05},
	"mm":          {says: "length", does: "As cut; of a layer its branch; of a splice its offset", first: 100},
	"finished_mm": {says: "finished length", does: "Of a wire, loops in, tails out", first: 100},
	"from_mm":     {says: "start", does: "Of a cover", step: 5},
	"to_mm":       {says: "stop", does: "Of a cover", step: 5},
	"lay_mm":      {says: "lay length", does: "Of a layer: one turn along the bundle", first: 50},
	"over_mm":     {says: "OD", does: "Of a layer", first: 5, step: 0.01},
	"path":        {says: "way", item: "branch", does: "Of a wire: the branches it runs through", from: branches, order: true},
	"path_mm":     {says: "lengths of its way", item: "length", does: "How long each of those branches was", order: true},
}

var signedLabels = map[string]label{
	"step": {says: "hold", does: "The hold that was passed", from: runSteps},
	"by":   {says: "by", does: "Number or name of the person", from: people},
	"at":   {says: "when", does: "Day and time"},
}

var readingLabels = map[string]label{
	"branch":  {says: "branch", does: "The branch that was measured", from: branches},
	"layer":   {says: "layer", does: "Which layer; 0 is the centre"},
	"bare_mm": {says: "before build-up", item: "reading", does: "Of a centre that is built up: before the tape", order: true},
	"over_mm": {says: "OD", item: "reading", does: "What the callipers read, one after another", order: true},
	"lay_mm":  {says: "lay length", does: "One turn, as it was laid", first: 50},
}

var usedLabels = map[string]label{
	"spec":    {says: "spec", does: "Specification on the label of the reel", from: specs},
	"size":    {says: "size", does: "Size on the label of the reel", from: sizes},
	"used_mm": {says: "used", does: "How much was taken off the reel", step: 100},
}

var tubeLabels = map[string]label{
	"branch":  {says: "branch", does: "The branch that was measured", from: branches},
	"over_mm": {says: "OD", does: "Over the sheath, once it was shrunk", step: 0.1},
}

var againLabels = map[string]label{
	"end":   {says: "end", does: "The cavity whose contact was made again", from: cavityEnds},
	"times": {says: "times", does: "How often"},
}

var deviationLabels = map[string]label{
	"at":    {says: "about", does: "The wire, layer, part, branch or termination", from: anything},
	"says":  {says: "what", does: "What was built otherwise than the sheet says"},
	"step":  {says: "step", does: "The step it was written down at", from: runSteps},
	"steps": {says: "steps kept", item: "step", does: "Steps that stay as they were built", from: runSteps},
	"by":    {says: "by", does: "Number or name of the person", from: people},
	"on":    {says: "when", does: "Day and time"},
}

var testLabels = map[string]label{
	"net":        {says: "net", does: "The net that was tested", from: signals},
	"feed":       {says: "feed", does: "The feed that was tested", from: feeds},
	"pull":       {says: "crimp pulled", does: "Wire and contact of the crimp that was pulled"},
	"ohm":        {says: "resistance", unit: "ohm", does: "What the instrument read", first: 1},
	"milliohm":   {says: "small resistance", unit: "mohm", does: "What the instrument read", first: 10},
	"megohm":     {says: "insulation", unit: "Mohm", does: "What the instrument read", first: 500},
	"volt":       {says: "voltage", unit: "V", does: "What the instrument read", first: 1},
	"newton":     {says: "pull", unit: "N", does: "What the instrument read", first: 50},
	"limit":      {says: "limit", does: "The limit, in the unit of what was read", first: 1},
	"instrument": {says: "instrument", does: "Which instrument it was"},
	"at":         {says: "when", does: "Day and time"},
	"by":         {says: "by", does: "Number or name of the person", from: people},
}

var lotLabels = map[string]label{
	"of":      {says: "part or reel", does: "What it is the lot of", from: lotParts},
	"lot":     {says: "lot", does: "The number on the label"},
	"expires": {says: "expires", does: "The day on the label"},
	"at":      {says: "when", does: "Day and time"},
	"by":      {says: "by", does: "Number or name of the person", from: people},
}
