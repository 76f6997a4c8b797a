package label

// The labels of the record of what was built.

var buildLabels = map[string]Label{
	"serial":    {Says: "serial", Does: "The number of the harness that was built"},
	"revision":  {Says: "revision", Does: "The revision of the sheet that it was built from", From: letters},
	"begun":     {Says: "begun", Does: "The day on which it was begun"},
	"note":      {Says: "note", Does: "From one hand to the next"},
	"each_test": {Says: "asks for each test", Does: "Its run asks for lots, pulled samples and each test"},
	"mass_g":    {Says: "mass", Does: "What it weighs on the scale, finished"},
	"goes_by":   {Says: "corrections", Item: "correction", Does: "Corrections of the shop that its sheet was begun with"},
	"done":      {Says: "done, by key alone", Item: "step", Does: "Steps that older files ticked, without what each made"},
}

var shelfLabels = map[string]Label{
	"spec":         {Says: "spec", Does: "Of a wire", From: specs},
	"size":         {Says: "size", Does: "Of a wire", From: sizes},
	"part":         {Says: "tube", Does: "A tube by its name in the catalogue"},
	"over_mm":      {Says: "OD", Does: "Of a wire, as the catalogue had it", Step: 0.01},
	"tol_mm":       {Says: "tolerance", Does: "More or less than the OD", Step: 0.01},
	"ohm_per_km":   {Says: "ohm a km", Does: "Of a wire, at most, at 20 °C"},
	"recovered_mm": {Says: "recovered bore", Does: "Of a tube, after free recovery", Step: 0.1},
	"wall_mm":      {Says: "wall", Does: "Of a tube, recovered", Step: 0.01},
}

var tickedLabels = map[string]Label{
	"key":    {Says: "step", Does: "The step of the run that was ticked", From: runSteps},
	"at":     {Says: "when", Does: "Day and time"},
	"by":     {Says: "by", Does: "Number or name of the person", From: people},
	"what":   {Says: "what was made", Does: "As the sheet had it when the step was ticked"},
	"sheet":  {Says: "what the sheet had", Does: "What the sheet had when somebody kept the step as it was built"},
	"so_far": {Says: "done so far", Does: "The pieces that are done of a step that is begun; a step that is done has none"},
	"undone": {Says: "undone because", Does: "A step with a reason here counts no more",
		From: names("crossed", "wrong wire", "wrong length", "damaged")},
}

var whatLabels = map[string]Label{
	"spec":        {Says: "spec", Does: "Of a wire", From: specs},
	"size":        {Says: "size", Does: "Of a wire", From: sizes},
	"colour":      {Says: "colour", Does: "Of a wire", From: colours},
	"part":        {Says: "part", Does: "Of a splice, a cover, a moulded part"},
	"place":       {Says: "place", Does: "Of a splice: its breakout and branch"},
	"hand":        {Says: "turns", Does: "Of a layer: LH, RH or straight"},
	"members":     {Says: "pieces", Item: "piece", Does: "Of a unit, a splice, a layer, a mix or a hold", Order: true},
	"ends":        {Says: "cavities filled", Item: "cavity", Does: "Each cavity and what is in it: A 101", Order: true},
	"fillers":     {Says: "fillers", Does: "How many pieces only keep the layer round"},
	"filler_mm":   {Says: "filler OD", Does: "How thick they were", First: 1.1, Step: 0.01},
	"bind_mm":     {Says: "binder", Does: "What tape or thread added", Step: 0.05},
	"mm":          {Says: "length", Does: "As cut; of a layer its branch; of a splice its offset", First: 100},
	"finished_mm": {Says: "finished length", Does: "Of a wire, loops in, tails out", First: 100},
	"from_mm":     {Says: "start", Does: "Of a cover", Step: 5},
	"to_mm":       {Says: "stop", Does: "Of a cover", Step: 5},
	"lay_mm":      {Says: "lay length", Does: "Of a layer: one turn along the bundle", First: 50},
	"over_mm":     {Says: "OD", Does: "Of a layer", First: 5, Step: 0.01},
	"path":        {Says: "way", Item: "branch", Does: "Of a wire: the branches it runs through", From: branches, Order: true},
	"path_mm":     {Says: "lengths of its way", Item: "length", Does: "How long each of those branches was", Order: true},
}

var signedLabels = map[string]Label{
	"step": {Says: "hold", Does: "The hold that was passed", From: runSteps},
	"by":   {Says: "by", Does: "Number or name of the person", From: people},
	"at":   {Says: "when", Does: "Day and time"},
}

var readingLabels = map[string]Label{
	"branch":  {Says: "branch", Does: "The branch that was measured", From: branches},
	"layer":   {Says: "layer", Does: "Which layer; 0 is the centre"},
	"bare_mm": {Says: "before build-up", Item: "reading", Does: "Of a centre that is built up: before the tape", Order: true},
	"over_mm": {Says: "OD", Item: "reading", Does: "What the callipers read, one after another", Order: true},
	"lay_mm":  {Says: "lay length", Does: "One turn, as it was laid", First: 50},
}

var usedLabels = map[string]Label{
	"spec":    {Says: "spec", Does: "Specification on the label of the reel", From: specs},
	"size":    {Says: "size", Does: "Size on the label of the reel", From: sizes},
	"used_mm": {Says: "used", Does: "How much was taken off the reel", Step: 100},
}

var tubeLabels = map[string]Label{
	"branch":  {Says: "branch", Does: "The branch that was measured", From: branches},
	"over_mm": {Says: "OD", Does: "Over the sheath, once it was shrunk", Step: 0.1},
}

var againLabels = map[string]Label{
	"end":   {Says: "end", Does: "The cavity whose contact was made again", From: cavityEnds},
	"times": {Says: "times", Does: "How often"},
}

var deviationLabels = map[string]Label{
	"at":    {Says: "about", Does: "The wire, layer, part, branch or termination", From: anything},
	"says":  {Says: "what", Does: "What was built otherwise than the sheet says"},
	"step":  {Says: "step", Does: "The step it was written down at", From: runSteps},
	"steps": {Says: "steps kept", Item: "step", Does: "Steps that stay as they were built", From: runSteps},
	"by":    {Says: "by", Does: "Number or name of the person", From: people},
	"on":    {Says: "when", Does: "Day and time"},
}

var testLabels = map[string]Label{
	"net":  {Says: "net", Does: "The net that was tested", From: signals},
	"feed": {Says: "feed", Does: "The feed that was tested", From: feeds},
	"step": {Says: "at step", Does: "The step of the run that it was tested at", From: runSteps},
	"fault": {Says: "fault", Does: "What was wrong; the last test of a net counts",
		From: names("does not ring", "rings elsewhere", "broke")},
	"pull":       {Says: "crimp pulled", Does: "Wire and contact of the crimp that was pulled"},
	"ohm":        {Says: "resistance", Unit: "ohm", Does: "What the instrument read", First: 1},
	"milliohm":   {Says: "small resistance", Unit: "mohm", Does: "What the instrument read", First: 10},
	"megohm":     {Says: "insulation", Unit: "Mohm", Does: "What the instrument read", First: 500},
	"volt":       {Says: "voltage", Unit: "V", Does: "What the instrument read", First: 1},
	"newton":     {Says: "pull", Unit: "N", Does: "What the instrument read", First: 50},
	"limit":      {Says: "limit", Does: "The limit, in the unit of what was read", First: 1},
	"instrument": {Says: "instrument", Does: "Which instrument it was"},
	"at":         {Says: "when", Does: "Day and time"},
	"by":         {Says: "by", Does: "Number or name of the person", From: people},
}

var lotLabels = map[string]Label{
	"of":      {Says: "part or reel", Does: "What it is the lot of", From: lotParts},
	"lot":     {Says: "lot", Does: "The number on the label"},
	"expires": {Says: "expires", Does: "The day on the label"},
	"at":      {Says: "when", Does: "Day and time"},
	"by":      {Says: "by", Does: "Number or name of the person", From: people},
}
