// Made by npm run generate from openapi/openapi.json.
export interface paths {
    "/livez": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * Whether the process runs
         * @description Touches nothing. A process that does not answer should be restarted.
         */
        get: operations["live"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/readyz": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * Whether requests can be served
         * @description A service that is not ready should be sent no requests.
         */
        get: operations["ready"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/evaluations": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /**
         * Evaluate one opening
         * @description Applies the rules of a place and date to an opening, and computes what the crew needs to build it. Nothing is kept unless asked.
         */
        post: operations["evaluateOpening"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/evaluations/{evaluation}": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * Read a kept evaluation
         * @description Answers a kept evaluation word for word as it was given.
         */
        get: operations["readEvaluation"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/evaluations/{evaluation}/reproduce": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /**
         * Reproduce a kept evaluation
         * @description Computes a kept evaluation again from the catalog of that time: identical, or the exact difference.
         */
        post: operations["reproduceEvaluation"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/evaluations/batch": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /**
         * Evaluate many openings
         * @description Evaluates openings of one place and date, in their order; one that cannot be read is told as such and holds nothing up. A JSON body holds up to 100. A body of lines of JSON (application/x-ndjson, application/jsonl) has no end of them: what holds for all stands in the query, each line is one opening, and each is answered by one line while more are still coming, so read while you send. When the quota is used up, the lines wait for it. Nothing is kept.
         */
        post: operations["evaluateBatch"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/drawings": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /**
         * Draw one opening
         * @description Evaluates an opening and draws it: to scale, with measures, and a number at each part of which a finding fails or is not determined. What is not known is drawn dashed or left out, and said. Nothing is kept.
         */
        post: operations["drawOpening"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/evaluations/{evaluation}/drawings/{kind}": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * Draw the opening of a kept evaluation
         * @description The opening as it was described, computed by the catalog of that time, with the findings of the kept evaluation numbered in it.
         */
        get: operations["drawEvaluation"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/rules": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * List rules
         * @description All rules of the catalog, or those in force for a jurisdiction, date and edition; filtered by part, topic, force or hold point.
         */
        get: operations["listRules"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/rules/{rule}": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * Read one rule
         * @description A rule with its history by edition, its sources and those that disagree, and, for a jurisdiction and date, the value in force with its chain.
         */
        get: operations["readRule"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/jurisdictions": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * List jurisdictions
         * @description Every jurisdiction of the catalog with what it has adopted and amended.
         */
        get: operations["listJurisdictions"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/jurisdictions/{jurisdiction}": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * Read one jurisdiction
         * @description A jurisdiction with what it has adopted and amended.
         */
        get: operations["readJurisdiction"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/amendments": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * List amendments
         * @description Every adopted amendment, whether it came with the catalog or through the service.
         */
        get: operations["listAmendments"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/amendments/{jurisdiction}/{instrument}": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * Read one amendment
         * @description An adopted amendment, whole.
         */
        get: operations["readAmendment"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/amendment-drafts": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * List drafts
         * @description The drafts of the jurisdictions that the caller may amend.
         */
        get: operations["listAmendmentDrafts"];
        put?: never;
        /**
         * Draft an amendment
         * @description Keeps an amendment as a draft, with everything that still stands in its way. Nobody is bound by a draft. With validateOnly nothing is kept.
         */
        post: operations["createAmendmentDraft"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/amendment-drafts/{draft}": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * Read a draft
         * @description A draft with everything that still stands in its way, checked against what is in force now.
         */
        get: operations["readAmendmentDraft"];
        /**
         * Change a draft
         * @description Replaces the content of a draft. Names the version it is based on, so that nobody overwrites what another has written.
         */
        put: operations["changeAmendmentDraft"];
        post?: never;
        /**
         * Throw a draft away
         * @description Removes a draft. What was adopted cannot be removed.
         */
        delete: operations["deleteAmendmentDraft"];
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/amendment-drafts/{draft}/preview": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /**
         * Preview a draft
         * @description What the draft would change: which rules on which dates, and which reference openings and kept evaluations of the jurisdiction would come out otherwise. Changes nothing.
         */
        post: operations["previewAmendmentDraft"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/amendment-drafts/{draft}/adopt": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /**
         * Adopt a draft
         * @description Adopts a draft as it was last read: from then on it is in force on its dates, on every replica, and is never edited or deleted. A later amendment may supersede it.
         */
        post: operations["adoptAmendmentDraft"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/publications": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * List publications
         * @description Every code, standard, trade note and book that a limit or a figure is taken from.
         */
        get: operations["listPublications"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/publications/{publication}": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * Read one publication
         * @description A publication with its editions and the standards that they bring with them.
         */
        get: operations["readPublication"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/releases": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * List releases
         * @description The cut releases of the catalog that one can evaluate by, and the one in use.
         */
        get: operations["listReleases"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/facts": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * List the facts of an opening
         * @description Every fact that a description may hold: its words, unit, allowed values, when it can be seen and what hides it.
         */
        get: operations["listFacts"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/hold-points": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * List the hold points
         * @description The order of the work, with what each stage hides, the facts first seen at it and the rules to be seen at it.
         */
        get: operations["listHoldPoints"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/forms": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * Read the form for a hold point
         * @description What an inspector can see at this hold point and the rules of the place ask for, as a JSON Schema document that a form library shows without knowing anything of openings. For an opening on record, ask for its own form.
         */
        get: operations["readForm"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/projects/{project}/openings/{opening}/form": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * Read the form for an opening on record
         * @description The form for a hold point, by what is on record of the opening: rules that are ruled out ask nothing, what was drawn and what was read last stand beside the questions, and what was left open at earlier hold points is asked again as long as it can be seen.
         */
        get: operations["readOpeningForm"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/projects/{project}/openings/{opening}/form-answers": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /**
         * Post a filled form
         * @description Every answer becomes an observation of its fact, taken or refused by itself; sent again, nothing is recorded twice. The note of the form is kept with each.
         */
        post: operations["postFormAnswers"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/quantities": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * List the quantities that can be computed
         * @description Each with its formula in words and its unit. Any of them can be computed by itself with "computation".
         */
        get: operations["listQuantities"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/quantities/{quantity}": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * Read one quantity
         * @description What it is computed with, by which formula and from which source.
         */
        get: operations["readQuantity"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/computations": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /**
         * Compute single quantities
         * @description Sizes a lintel or counts weeps without a whole wall: whatever is given is used, the rest is computed, and what is missing is named. Nothing is kept. Without a place no rule is in force, and its limit is missing unless given.
         */
        post: operations["computeQuantities"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/take-offs": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /**
         * Take off a whole opening schedule
         * @description Lintels, flashing with its cutting lists, weeps, ties, brick and sealant of some openings together. What is not known is listed as a gap, never counted as nought.
         */
        post: operations["takeOff"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/cut-lists": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /**
         * Plan how pieces are cut from stock
         * @description The cutting list that buys the least stock. Where that is not proven the bound says how far from it the list can be at most.
         */
        post: operations["planCuts"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/driving-rain": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /**
         * Read driving rain out of an hourly weather file
         * @description Driving rain on walls by direction, by year and by spell. Nothing is computed from a file whose rain is missing or mis-scaled; the answer says why. The file is not kept.
         */
        post: operations["analyzeDrivingRain"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/projects": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * List projects
         * @description Every building whose openings are recorded, among those that the token may record in.
         */
        get: operations["listProjects"];
        put?: never;
        /**
         * Open the record of a building
         * @description A building whose openings are recorded, with the place and date that its permit fixes. The id is the client's; the same project sent twice is one. Needs the scope "record" for all projects.
         */
        post: operations["createProject"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/projects/{project}": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * Read a project
         * @description A building with its place and date.
         */
        get: operations["readProject"];
        /**
         * Change a project
         * @description Corrects the title, the place or the date. What was recorded is judged by the new place and date from then on; the journal is not touched.
         */
        put: operations["changeProject"];
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/projects/{project}/entries": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /**
         * Put things on record
         * @description Designs, observations, corrections, sign-offs, waivers, remedies and verifications, in any order, late or twice. Each is answered by itself; nothing that was taken is ever dropped or overwritten.
         */
        post: operations["postEntries"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/projects/{project}/schedule-imports": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /**
         * Import an opening schedule
         * @description Makes the design of an opening from each row of a sheet, with every problem of every row told at once. One problem anywhere holds everything back, unless the good rows are to be taken. The answer says which were.
         */
        post: operations["importSchedule"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/projects/{project}/journal": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * Read the journal of a project
         * @description Every entry in the order in which it arrived, chained to the one before. Whoever keeps the last link can tell later whether anything was changed, taken out or put in between.
         */
        get: operations["readJournal"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/projects/{project}/openings": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * List the openings of a project
         * @description How every opening stands that anything is on record of, in the order of their ids.
         */
        get: operations["listOpenings"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/projects/{project}/building": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * Read a building by its openings
         * @description Status by part and by hold point, every mandatory rule that is not met, what to look at on each walk, the lintel schedule, flashing with its cutting lists, weeps and ties in total. What could not be evaluated or computed is named, never counted as nought.
         */
        get: operations["readBuilding"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/projects/{project}/tables/{table}": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * Read one table of a building as CSV
         * @description One table of the building as RFC 4180 has it, in UTF-8 with a header. A text that a spreadsheet would take for a formula is led by an apostrophe.
         */
        get: operations["readBuildingTable"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/projects/{project}/openings/{opening}": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * Read the record of an opening
         * @description What was drawn, what was seen and by whom, where the two differ, where two readings contradict each other, and how every miss stands.
         */
        get: operations["readOpeningRecord"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/projects/{project}/openings/{opening}/evaluation": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * Evaluate an opening by its record
         * @description As it was drawn, as it was seen, or as it was seen with the drawing where nobody has looked yet.
         */
        get: operations["evaluateRecordedOpening"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/projects/{project}/exports/{format}": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * Export the findings of a building
         * @description The findings of every opening, as seen, and as drawn where nobody has looked yet, in an open format: SARIF 2.1.0 for viewers of results, OSCAL 1.1.2 assessment results for systems of record, BCF 3.0 topics for building-model software. Ids are the same each time, so that a receiver can tell what it has already.
         */
        get: operations["exportProject"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/reports": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /**
         * Report on one opening
         * @description Evaluates an opening and answers a page of HTML to print: findings by hold point with sources and remedies, drawings, quantities, and how to reproduce it. The page takes nothing from anywhere and runs no script. Nothing is kept.
         */
        post: operations["reportOpening"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/evaluations/{evaluation}/report": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * Report on a kept evaluation
         * @description A kept evaluation, word for word as it was given, as a page of HTML to print. Drawings are in it while the catalog of that time is here.
         */
        get: operations["readEvaluationReport"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/projects/{project}/report": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * Report on a building
         * @description The building by its openings as a page of HTML to print: status at every hold point, what is not met with its remedies, lintel schedule, cut list, take-off, and every opening in short.
         */
        get: operations["readBuildingReport"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/projects/{project}/openings/{opening}/report": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * Report on an opening of a project
         * @description An opening by its record as a page of HTML to print: findings by what is known now, as seen and as drawn where nobody has looked yet, with drawings and quantities; readings that contradict, sign-offs, waivers, and how every miss stands.
         */
        get: operations["readOpeningReport"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/tokens": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * List tokens
         * @description Every token that was made, without its secret.
         */
        get: operations["listTokens"];
        put?: never;
        /**
         * Make a token
         * @description Makes a token with some scopes. Its secret is shown once.
         */
        post: operations["createToken"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/tokens/{token}": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        post?: never;
        /**
         * Revoke a token
         * @description Ends a token at once. What it did stays on record under its id.
         */
        delete: operations["revokeToken"];
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/webhooks": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * List webhooks
         * @description Where events are sent, and which; without the secrets.
         */
        get: operations["listWebhooks"];
        put?: never;
        /**
         * Make a webhook
         * @description Sends events to an address from now on: CloudEvents in JSON, signed as Standard Webhooks says, by a secret that is shown once or by a key of which only the public half is shown. Each event is delivered at least once and may overtake another; what is not taken is tried again for about three days.
         */
        post: operations["createWebhook"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/webhooks/{webhook}": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * Read a webhook
         * @description Where it leads, what it listens for, and whether it is reached.
         */
        get: operations["readWebhook"];
        put?: never;
        post?: never;
        /**
         * Delete a webhook
         * @description Ends it at once. What was still on its way to it is dropped; an attempt that is under way may still arrive.
         */
        delete: operations["deleteWebhook"];
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/webhooks/{webhook}/secret": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /**
         * Change the signing secret
         * @description Makes a new signing secret, shown once, or a new pair of keys, whose public key is in the webhook. For 24 hours deliveries carry a signature by each, so that the receiver can change over without losing one.
         */
        post: operations["rotateWebhookSecret"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/webhooks/{webhook}/enable": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /**
         * Enable a webhook again
         * @description Sends events again, first what was held back. What happened while it was disabled was not kept for it: read the journal or the lists.
         */
        post: operations["enableWebhook"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/webhooks/{webhook}/ping": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /**
         * Try a webhook
         * @description Sends a ping on the way that every event takes. The list of deliveries tells what became of it.
         */
        post: operations["pingWebhook"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/webhooks/{webhook}/deliveries": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * List the deliveries of a webhook
         * @description What was sent, what the receiver answered and when it is tried again, newest first. What has ended is forgotten after 30 days.
         */
        get: operations["listDeliveries"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/webhooks/{webhook}/deliveries/{delivery}/replay": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /**
         * Send an event again
         * @description Sends the event of a delivery once more, word for word and under the same id, as a delivery of its own. A receiver that took it already will pass it over.
         */
        post: operations["replayDelivery"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
}
export type webhooks = Record<string, never>;
export interface components {
    schemas: {
        Adoption: {
            adoption: string;
            publication: string;
            edition: string;
            effectiveFrom: string;
            effectiveUntil: string | null;
            instrument: components["schemas"]["Instrument"];
        };
        AffectedAmendment: {
            amendment: string;
            code: string;
            pointer: string;
            detail: string;
        };
        Amendment: {
            amendment: string;
            publication: string;
            editions: string[];
            effectiveFrom: string;
            effectiveUntil: string | null;
            instrument: components["schemas"]["Instrument"];
            modifications: components["schemas"]["ModificationSummary"][];
            jurisdiction: string;
            supersedes: string[];
            /** @description The amendment as JSON text. */
            document: string;
        };
        AmendmentDraft: {
            id: string;
            jurisdiction: string;
            amendment: string | null;
            /** @description Changes with the content; a change has to name it. */
            version: string;
            createdAt: string;
            changedAt: string;
            /** @description The content as JSON text. */
            document: string;
            check: components["schemas"]["DraftCheck"];
        };
        AmendmentDraftPage: {
            items: components["schemas"]["AmendmentDraft"][];
            /** @description Null on the last page. */
            nextCursor: string | null;
        };
        AmendmentPage: {
            items: components["schemas"]["AmendmentSummary"][];
            /** @description Null on the last page. */
            nextCursor: string | null;
        };
        AmendmentPreview: {
            draft: string;
            /** @description Permit application dates on which something changes; each opening was tried on all. */
            dates: string[];
            rules: components["schemas"]["RuleChange"][];
            reviewNeeded: components["schemas"]["RepealToReview"][];
            openings: number;
            referenceOpenings: number;
            keptOpenings: number;
            /** @description True when there are more kept evaluations than were tried. */
            moreKept: boolean;
            openingsChanged: number;
            verdictsChanged: number;
            /** @description Tries for which no rules could be settled. */
            notSettled: number;
            outcomes: components["schemas"]["OutcomeTransition"][];
            verdicts: components["schemas"]["VerdictTransition"][];
            examples: components["schemas"]["ImpactExample"][];
        };
        AmendmentProblem: {
            code: string;
            pointer: string;
            detail: string;
        };
        AmendmentSummary: {
            amendment: string;
            publication: string;
            editions: string[];
            effectiveFrom: string;
            effectiveUntil: string | null;
            instrument: components["schemas"]["Instrument"];
            modifications: components["schemas"]["ModificationSummary"][];
        };
        /** @enum {string} */
        AnalysisStatus: "computed" | "notDetermined";
        /** @description Each value as JSON text; null where one answer has nothing there. */
        AnswerDifference: {
            pointer: string;
            kept: string | null;
            now: string | null;
        };
        /** @description Between which bounds the value lies, in `unit`. */
        Band: {
            least: number;
            greatest: number;
        };
        /** Water-resistive barrier */
        BarrierInput: {
            /**
             * Water-resistive barrier
             * @description What sheds the water behind the air space.
             */
            kind?: ("no15Felt" | "buildingPaper" | "buildingWrap" | "fluidApplied" | "coatedSheathing" | "foamSheathing" | "none") | null;
            /**
             * Layers of barrier
             * @description 0 when there is none.
             */
            layers?: number | null;
            /**
             * Upper sheet over lower
             * @description Lap at horizontal joints, upper over lower.
             */
            horizontalLap?: components["schemas"]["LengthInput"] | null;
            /**
             * Lap at vertical joints
             * @description Lap where two sheets meet end to end.
             */
            verticalLap?: components["schemas"]["LengthInput"] | null;
            /**
             * Width of the roll
             * @description Of the sheet as delivered.
             */
            rollWidth?: components["schemas"]["LengthInput"] | null;
            /**
             * Length of the roll
             * @description Of the sheet as delivered.
             */
            rollLength?: components["schemas"]["LengthInput"] | null;
            /**
             * Upper sheets over lower ones
             * @description False when any lap faces up.
             */
            shingled?: boolean | null;
            /**
             * Barrier at the head flashing
             * @description Over the flashing sheds water; behind it leads water in.
             */
            headFlap?: ("overFlashing" | "behindFlashing" | "tapedToFace" | "cutFlush") | null;
            /**
             * Barrier to the top of the wall
             * @description Ends at the top in a way that keeps water out.
             */
            continuousToTop?: boolean | null;
            /**
             * Barrier without tears
             * @description Looked at before the brick goes on.
             */
            intact?: boolean | null;
        };
        /** Base flashing */
        BaseFlashingInput: {
            /**
             * Base flashing present
             * @description Under the first course above grade.
             */
            present?: boolean | null;
            /**
             * Base flashing material
             * @description What carries the water, not the drip or the primer.
             */
            material?: ("stainlessSteel" | "copper" | "leadCoatedCopper" | "copperComposite" | "galvanizedSteel" | "selfAdheredMembrane" | "epdm" | "pvc" | "aluminum" | "lead" | "polyethylene" | "asphaltFelt" | "buildingWrap") | null;
            /**
             * Base flashing up the backing
             * @description How far it runs up behind the brick.
             */
            upstand?: components["schemas"]["LengthInput"] | null;
            /**
             * Base flashing reaches the face
             * @description False when it stops inside the brick.
             */
            reachesFace?: boolean | null;
            /**
             * Barrier laps over the base flashing
             * @description True when the barrier comes down over the upstand.
             */
            barrierOver?: boolean | null;
            /**
             * Base flashing above finished grade
             * @description Negative when the grade is higher.
             */
            aboveGrade?: components["schemas"]["LengthInput"] | null;
        };
        /** Base of the wall */
        BaseInput: {
            flashing?: components["schemas"]["BaseFlashingInput"] | null;
            weeps?: components["schemas"]["BaseWeepsInput"] | null;
            /**
             * Base weeps above finished grade
             * @description Negative when buried.
             */
            weepsAboveGrade?: components["schemas"]["LengthInput"] | null;
            /**
             * Ledge below the floor
             * @description How far the brick ledge lies below the top of the foundation.
             */
            ledgeRecess?: components["schemas"]["LengthInput"] | null;
            /**
             * Brick past the ledge
             * @description How far the brick stands out in front of its ledge.
             */
            ledgeOverhang?: components["schemas"]["LengthInput"] | null;
            /**
             * Space filled below the flashing
             * @description Mortar or grout fills the space up to the base flashing.
             */
            spaceFilledBelowFlashing?: boolean | null;
            /**
             * Foundation above finished grade
             * @description Top of the foundation wall.
             */
            foundationAboveGrade?: components["schemas"]["LengthInput"] | null;
        };
        /** Weeps at the base */
        BaseWeepsInput: {
            /**
             * Kind of weep at the base
             * @description A rope that is pulled out leaves a tube; a rope left in place is a wick.
             */
            kind?: ("openHeadJoint" | "cellVent" | "mesh" | "tube" | "wick" | "rope" | "none") | null;
            /**
             * Weep spacing at the base
             * @description Greatest distance between two weeps, center to center.
             */
            spacing?: components["schemas"]["LengthInput"] | null;
            /**
             * Weep size at the base
             * @description Least clear diameter or joint width.
             */
            diameter?: components["schemas"]["LengthInput"] | null;
            /**
             * Height of an open weep at the base
             * @description Of an open head joint or vent; the whole course when left out.
             */
            openHeight?: components["schemas"]["LengthInput"] | null;
            /**
             * Number of weeps at the base
             * @description Counted over this opening.
             */
            count?: number | null;
            /**
             * Weeps on the flashing at the base
             * @description True when the weep sits directly on the flashing, not a course above.
             */
            onFlashing?: boolean | null;
            /**
             * Weeps open at the base
             * @description False when mortar, paint or sealant closes any of them.
             */
            open?: boolean | null;
            /**
             * End weep to end dam at the base
             * @description From the last weep to the end of the flashing.
             */
            endWeepToDam?: (components["schemas"]["LengthInput"] | (components["schemas"]["LengthInput"] | null)[]) | null;
        };
        /** @description What one opening came to, or why it was not evaluated. */
        BatchAnswer: {
            /** @description Which it was of the openings, or on which line it stood, from 1. */
            line: number;
            key: string | null;
            reference: string | null;
            brief: components["schemas"]["BriefEvaluation"] | null;
            /** @description With "detail": "full". */
            evaluation: components["schemas"]["Evaluation"] | null;
            /** @description The problem code, where it was not evaluated. */
            code: string | null;
            problems: components["schemas"]["BatchProblem"][];
        };
        /** @enum {string} */
        BatchDetail: "brief" | "full";
        BatchEvaluation: {
            answers: components["schemas"]["BatchAnswer"][];
        };
        BatchOpening: {
            /** @description What the caller calls it. It comes back with the answer. */
            key?: string | null;
            /** @description Where the work stands at this opening; where it stands for the whole batch when left out. */
            holdPoint?: components["schemas"]["HoldPointId"] | null;
            opening: components["schemas"]["OpeningInput"];
        };
        BatchProblem: {
            code: string;
            pointer: string;
            detail: string;
        };
        BatchRequest: {
            /** @description Whose rules apply: "us-xa-101-2400000". Left out with an edition, the published texts alone are meant. */
            jurisdiction?: string | null;
            /** @description The permit application date, which selects what was in force. Today when left out. */
            asOf?: string | null;
            /** @description Takes this edition whatever is adopted: "irc-2021". */
            edition?: string | null;
            /** @description Which code is meant where several are adopted: "irc" for one- and two-family dwellings, "ibc" for other buildings. */
            publication?: string | null;
            /** @description Evaluates by a past release of the catalog as it was cut; by what is in force now when left out. */
            release?: string | null;
            /** @description Where the work stands, for openings that do not say it themselves. */
            holdPoint?: components["schemas"]["HoldPointId"] | null;
            /** @description brief: the verdict, what is not met, what is not determined and what to measure next. full: whole evaluations beside, with quantities and digest. Brief when left out. */
            detail?: components["schemas"]["BatchDetail"] | null;
            openings: components["schemas"]["BatchOpening"][];
        };
        /** @description The verdict with what stands in its way; the evaluation of the opening has the rest. */
        BriefEvaluation: {
            asOf: string;
            jurisdiction: string | null;
            catalog: components["schemas"]["CatalogStamp"];
            summary: components["schemas"]["Summary"];
            notMet: components["schemas"]["OpenFinding"][];
            notDetermined: components["schemas"]["OpenFinding"][];
            nextToMeasure: components["schemas"]["FactToMeasure"][];
            notice: string;
        };
        Building: {
            project: string;
            title: string;
            jurisdiction: string | null;
            asOf: string;
            editions: string[];
            basis: components["schemas"]["RecordBasis"];
            catalog: components["schemas"]["CatalogUsed"];
            openings: number;
            evaluated: number;
            /** @description How many of the openings every figure below counts, in words. */
            counted: string;
            verdicts: components["schemas"]["VerdictCounts"];
            parts: components["schemas"]["PartStatus"][];
            holdPoints: components["schemas"]["HoldPointStatus"][];
            status: components["schemas"]["BuildingOpening"][];
            /** @description Mandatory rules that are not met, each end by itself. */
            failures: components["schemas"]["MandatoryFailure"][];
            /** @description What is not known and can still be seen, in the order of the work. */
            walks: components["schemas"]["Walk"][];
            lintels: components["schemas"]["LintelLine"][];
            flashing: components["schemas"]["FlashingPiece"][];
            cutLists: components["schemas"]["FlashingCutList"][];
            /** @description Weeps, ties, bricks and sealant. Openings are named by id. */
            totals: components["schemas"]["TakeOffTotal"][];
            /** @description What could not be computed; the totals are short of it. */
            gaps: components["schemas"]["TakeOffGap"][];
            notEvaluated: components["schemas"]["NotEvaluatedOpening"][];
            notice: string;
        };
        BuildingOpening: {
            opening: string;
            reference: string | null;
            /** @description The system in which it was described. */
            unitSystem: components["schemas"]["UnitSystem"];
            /** @description As far as the work is known to stand. */
            holdPoint: components["schemas"]["HoldPointId"] | null;
            verdict: components["schemas"]["Verdict"];
            pass: number;
            fail: number;
            notDetermined: number;
            notApplicable: number;
            mandatoryFailures: number;
            mandatoryNotDetermined: number;
            /** @description Mandatory rules that are not decided and that a look can no longer decide: the work has hidden what to look at. */
            noLongerInSight: string[];
            readiness: components["schemas"]["OpeningReadiness"][];
        };
        BuiltOtherwise: {
            fact: string;
            member: ("left" | "right") | null;
            designed: string;
            built: string;
        };
        /** @enum {string} */
        ByteOrderMark: "yes" | "no";
        CatalogStamp: {
            release: string;
            digest: string;
        };
        CatalogUsed: {
            release: string;
            digest: string;
        };
        /** @description What a word of the sheet means. */
        CellValueInput: {
            cell: string;
            /** @description Left out: this word means that it is not known. */
            value?: components["schemas"]["FactValue"] | null;
        };
        ChainStep: {
            /** @description modelCode, standard, practice, or the jurisdiction that acted. */
            layer: string;
            /** @enum {string} */
            action: "published" | "adoption" | "substitution" | "insertion" | "repeal" | "renumbering";
            publication: string | null;
            edition: string | null;
            locator: string | null;
            readIn: string | null;
            /** @description The adoption or amendment, by id. */
            document: string | null;
            modification: string | null;
            /** @description What a substitution replaced: limit, statement, condition, force, holdPoint, materials or remedy. */
            part: string | null;
            instrument: components["schemas"]["Instrument"] | null;
            effectiveFrom: string | null;
            old: string | null;
            new: string | null;
        };
        ChosenRemedy: {
            entry: string;
            at: string;
            by: string;
            work: string;
            due: string | null;
        };
        /** @enum {string} */
        ColumnSeparator: "comma" | "semicolon" | "tab";
        /**
         * @description "Less than 33 in" and "at most 33 in" differ, so each has its own comparator.
         * @enum {string}
         */
        Comparator: "notLessThan" | "notMoreThan" | "lessThan" | "moreThan" | "equalTo" | "oneOf" | "noneOf";
        /** Quantities computed by themselves */
        Computation: {
            /** @description Rises when arithmetic or logic changes. */
            method: string;
            catalog: components["schemas"]["CatalogStamp"];
            jurisdiction: string | null;
            asOf: string | null;
            editions: string[];
            quantities: components["schemas"]["ComputedQuantity"][];
            /** @description What was computed on the way, in the order of the work. */
            buildsOn: components["schemas"]["ComputedQuantity"][];
            notice: string;
            /** @description SHA-256 over RFC 8785 canonical JSON of the rest. */
            digest: string;
        };
        ComputationRequest: {
            /** @description The ids of the quantities to compute. */
            quantities: string[];
            /** @description What to compute with. It goes before the description, the rules in force and the figures of the catalog. */
            given?: components["schemas"]["GivenInput"][] | null;
            /** @description The unit of every length that is given without one. */
            lengthUnit?: ("in" | "mm") | null;
            /** @description Whose rules apply: "us-xa-101-2400000". Left out with an edition, the published texts alone are meant. */
            jurisdiction?: string | null;
            /** @description The permit application date, which selects what was in force. Today when left out. */
            asOf?: string | null;
            /** @description Takes this edition whatever is adopted: "irc-2021". */
            edition?: string | null;
            /** @description Which code is meant where several are adopted: "irc" for one- and two-family dwellings, "ibc" for other buildings. */
            publication?: string | null;
            /** @description As much of a description as there is. */
            opening?: components["schemas"]["PartialOpeningInput"] | null;
        };
        ComputedQuantity: {
            id: string;
            title: string;
            part: components["schemas"]["Part"];
            status: components["schemas"]["QuantityStatus"];
            value: string | null;
            inchPound: string | null;
            si: string | null;
            /** @description In `unit`; null for a text or a list. */
            amount: number | null;
            /** @description UCUM code of `amount` and `amounts`. */
            unit: string | null;
            amounts: number[];
            /** @description For a value that is known only between bounds. */
            band: components["schemas"]["Band"] | null;
            formula: string;
            inputs: components["schemas"]["UsedInput"][];
            steps: string[];
            tables: components["schemas"]["QuantityTable"][];
            notes: string[];
            assumptions: string[];
            sources: components["schemas"]["Source"][];
            missing: string[];
            reason: components["schemas"]["Reason"] | null;
            why: string | null;
            /** @description Only orders or compares; not a figure to build by. */
            indicative: boolean;
            needsLicensedProfessional: boolean;
        };
        /** @description Takes another entry out of account: a reading that was a mistake, a sign-off or a waiver that is withdrawn. It stays on record and is shown with the reason. */
        CorrectionInput: {
            /**
             * Format: uuid
             * @description Made by the client, so that the same thing sent twice is one.
             */
            entry: string;
            reason: string;
        };
        CreatedToken: {
            token: components["schemas"]["Token"];
            /** @description Shown this once; only its hash is kept. */
            secret: string;
        };
        CurrentRelease: {
            release: string;
            digest: string;
            /** @description Amendments adopted through the service that are in it. */
            adoptions: number;
        };
        CutBar: {
            stock: components["schemas"]["LengthView"];
            pieces: components["schemas"]["CutPiece"][];
            offcut: components["schemas"]["LengthView"];
        };
        /** @description `stock` is all that is bought; no way of cutting buys less than `bound`. */
        CutList: {
            bars: components["schemas"]["CutBar"][];
            stock: components["schemas"]["LengthView"];
            pieces: components["schemas"]["LengthView"];
            sawCuts: components["schemas"]["LengthView"];
            trim: components["schemas"]["LengthView"];
            offcuts: components["schemas"]["LengthView"];
            bound: components["schemas"]["LengthView"];
            /** @description True where it is proven that nothing less will do. */
            optimal: boolean;
        };
        CutListAnswer: {
            plan: components["schemas"]["CutList"] | null;
            tooLong: components["schemas"]["PieceTooLong"][];
        };
        CutListRequest: {
            pieces: components["schemas"]["CutPieceInput"][];
            /** @description Lengths in which the stock is sold; of each there is any number. */
            stockLengths: components["schemas"]["LengthInput"][];
            /** @description What one saw cut takes away. */
            kerf?: components["schemas"]["LengthInput"] | null;
            /** @description What is cut off every bar before it is used. */
            trim?: components["schemas"]["LengthInput"] | null;
            /** @description The unit of every length that is given without one. */
            lengthUnit?: ("in" | "mm") | null;
        };
        CutPiece: {
            reference: string;
            length: components["schemas"]["LengthView"];
        };
        CutPieceInput: {
            reference: string;
            length: components["schemas"]["LengthInput"];
            count: number;
        };
        DeletedWebhook: {
            webhook: string;
            deletedAt: string;
        };
        /** @enum {string} */
        DeliveredType: "openingRecorded" | "holdPointSignedOff" | "projectCreated" | "projectChanged" | "amendmentAdopted" | "evaluationKept" | "ping";
        Delivery: {
            delivery: string;
            /** @description The id of the event; the receiver saw it as `webhook-id`. */
            event: string;
            eventType: components["schemas"]["DeliveredType"];
            state: components["schemas"]["DeliveryState"];
            attempts: number;
            /** @description When it is tried next; while it is being tried, when others may take it over. */
            nextAt: string | null;
            /** @description What the receiver answered last; null when there was no answer. */
            status: number | null;
            fault: string | null;
            createdAt: string;
            deliveredAt: string | null;
        };
        DeliveryPage: {
            items: components["schemas"]["Delivery"][];
            /** @description Null on the last page. */
            nextCursor: string | null;
        };
        /**
         * @description Tried until it is taken, at once and up to nine times more; or given up.
         * @enum {string}
         */
        DeliveryState: "due" | "delivered" | "givenUp";
        /** @description Length and bearing at each end as drawn or seen, where known. */
        DescribedLintel: {
            length: components["schemas"]["LengthView"] | null;
            left: components["schemas"]["LengthView"] | null;
            right: components["schemas"]["LengthView"] | null;
        };
        DescriptionProblem: {
            code: string;
            pointer: string;
            detail: string;
        };
        DesignInput: {
            description: components["schemas"]["OpeningInput"];
            /** @description The version of the design that this one replaces, so that nobody overwrites what another has drawn. Left out for the first. */
            replaces?: string | null;
        };
        /** @description Where the wind comes from, degrees from north. */
        DirectionColumnInput: {
            column: string;
        };
        /**
         * @description The receiver answered 410; or an event was given up and nothing has reached the receiver since it happened.
         * @enum {string}
         */
        DisabledBecause: "gone" | "unreachable";
        /** @description Another source that says otherwise. */
        Disagreement: {
            source: string;
            states: string;
            evidence: components["schemas"]["Evidence"];
            note: string | null;
        };
        DraftCheck: {
            adoptable: boolean;
            /** @description What stands in the way in the draft itself. */
            problems: components["schemas"]["AmendmentProblem"][];
            /** @description Amendments in force that would go stale or compete. */
            affected: components["schemas"]["AffectedAmendment"][];
            /** @description Repeals where an outer jurisdiction allows only stricter rules: somebody has to read their reason. */
            reviewNeeded: components["schemas"]["ReviewNeeded"][];
        };
        /**
         * @description elevation: the front of the wall. section: head, sill and base cut through. flashingPattern: the blanks of the flashings. weepsAndTies: where each weep and tie goes.
         * @enum {string}
         */
        DrawingKind: "elevation" | "section" | "flashingPattern" | "weepsAndTies";
        DrawingRequest: {
            opening: components["schemas"]["OpeningInput"];
            /** @description Whose rules apply: "us-xa-101-2400000". Left out with an edition, the published texts alone are meant. */
            jurisdiction?: string | null;
            /** @description The permit application date, which selects what was in force. Today when left out. */
            asOf?: string | null;
            /** @description Takes this edition whatever is adopted: "irc-2021". */
            edition?: string | null;
            /** @description Which code is meant where several are adopted: "irc" for one- and two-family dwellings, "ibc" for other buildings. */
            publication?: string | null;
            /** @description Where the work stands. What an earlier operation hid then counts as covered. */
            holdPoint?: components["schemas"]["HoldPointId"] | null;
            kind: components["schemas"]["DrawingKind"];
            /** @description Evaluates by a past release of the catalog as it was cut; by what is in force now when left out. */
            release?: string | null;
        };
        DrivingRainAnalysis: {
            status: components["schemas"]["AnalysisStatus"];
            why: string | null;
            file: components["schemas"]["HourlyFileSummary"] | null;
            findings: components["schemas"]["QualityFinding"][];
            rain: components["schemas"]["RainSums"] | null;
            walls: components["schemas"]["WallRain"][];
            notes: string[];
            sources: components["schemas"]["RainSource"][];
            notice: string;
        };
        DrivingRainRequest: {
            /** @description The file, word for word. */
            text: string;
            format: components["schemas"]["HourlyFormat"];
            /** @description Where a table has what; not for EnergyPlus files. */
            layout?: components["schemas"]["HourlyTableInput"] | null;
            /** @description Where walls face, degrees from north; the eight directions when left out. */
            azimuths?: number[] | null;
        };
        EntriesAnswer: {
            /** @description One for each entry, in the order sent. */
            results: components["schemas"]["EntryResult"][];
            /** @description Each opening that was touched, as it stands now. */
            openings: components["schemas"]["OpeningAfterPosting"][];
        };
        EntriesRequest: {
            entries: components["schemas"]["EntryInput"][];
        };
        /** @description One thing to put on record: exactly one of design, observation, correction, signOff, waiver, remedy and verification. */
        EntryInput: {
            /**
             * Format: uuid
             * @description Made by the client, so that the same thing sent twice is one.
             */
            id: string;
            /** @description The client's own id of the opening within the project. */
            opening: string;
            /**
             * Format: date-time
             * @description When it was collected or decided, by the clock of the device.
             */
            at: string;
            /** @description A role or an opaque id, never the name of a person: "inspector", "crew-7". */
            by: string;
            note?: string | null;
            evidence?: components["schemas"]["EvidenceLink"][] | null;
            design?: components["schemas"]["DesignInput"] | null;
            observation?: components["schemas"]["ObservationInput"] | null;
            correction?: components["schemas"]["CorrectionInput"] | null;
            signOff?: components["schemas"]["SignOffInput"] | null;
            waiver?: components["schemas"]["WaiverInput"] | null;
            remedy?: components["schemas"]["RemedyInput"] | null;
            verification?: components["schemas"]["VerificationInput"] | null;
        };
        /** @enum {string} */
        EntryKind: "design" | "observation" | "correction" | "signOff" | "waiver" | "remedy" | "verification";
        /**
         * @description On record now; on record since an earlier time; not taken, for the reasons given.
         * @enum {string}
         */
        EntryOutcome: "recorded" | "alreadyRecorded" | "refused";
        EntryProblem: {
            code: string;
            pointer: string;
            detail: string;
        };
        EntryResult: {
            id: string | null;
            outcome: components["schemas"]["EntryOutcome"];
            /** @description Its number in the journal of the project. */
            sequence: number | null;
            problems: components["schemas"]["EntryProblem"][];
        };
        /** Evaluation of one opening */
        Evaluation: {
            id: string;
            evaluatedAt: string;
            /** @description Rises when arithmetic or logic changes. */
            method: string;
            catalog: components["schemas"]["CatalogStamp"];
            jurisdiction: string | null;
            resolvedAt: string | null;
            asOf: string;
            adoption: string | null;
            editions: string[];
            holdPoint: components["schemas"]["HoldPointId"] | null;
            /** @description The catalog holds only some requirements of the code in force, so no verdict is better than incomplete. */
            inPart: boolean;
            subject: components["schemas"]["Subject"];
            summary: components["schemas"]["Summary"];
            findings: components["schemas"]["Finding"][];
            quantities: components["schemas"]["ComputedQuantity"][];
            nextToMeasure: components["schemas"]["FactToMeasure"][];
            repealed: components["schemas"]["RepealedRule"][];
            notice: string;
            /** @description SHA-256 over RFC 8785 canonical JSON of all but id and evaluatedAt. */
            digest: string;
        };
        EvaluationRequest: {
            opening: components["schemas"]["OpeningInput"];
            /** @description Whose rules apply: "us-xa-101-2400000". Left out with an edition, the published texts alone are meant. */
            jurisdiction?: string | null;
            /** @description The permit application date, which selects what was in force. Today when left out. */
            asOf?: string | null;
            /** @description Takes this edition whatever is adopted: "irc-2021". */
            edition?: string | null;
            /** @description Which code is meant where several are adopted: "irc" for one- and two-family dwellings, "ibc" for other buildings. */
            publication?: string | null;
            /** @description Where the work stands. What an earlier operation hid then counts as covered. */
            holdPoint?: components["schemas"]["HoldPointId"] | null;
            /** @description Evaluates by a past release of the catalog as it was cut; by what is in force now when left out. */
            release?: string | null;
            /** @description Keeps the evaluation, so that it can be read and reproduced. Needs the scope "record". */
            keep?: boolean | null;
            /** @description The project in whose record it is kept, for all who may record in it. Left out, it is for those alone who may record in all projects. */
            project?: string | null;
        };
        /**
         * @description What one can listen for. As a CloudEvent its type begins with "wythe.".
         * @enum {string}
         */
        EventType: "openingRecorded" | "holdPointSignedOff" | "projectCreated" | "projectChanged" | "amendmentAdopted" | "evaluationKept";
        /**
         * @description primary: the text itself was read. secondary: a text that states the figure was read. memory: not confirmed in a text.
         * @enum {string}
         */
        Evidence: "primary" | "secondary" | "memory";
        /** @description A picture or a paper that is kept elsewhere, pinned by its SHA-256. */
        EvidenceLink: {
            /** Format: uri */
            link: string;
            sha256: string;
            takenAt?: string | null;
        };
        /** Exposure */
        ExposureInput: {
            /**
             * Terrain
             * @description What stands between the wall and the wind.
             */
            terrain?: ("urban" | "suburban" | "open" | "coastal") | null;
            /**
             * Basic wind speed
             * @description Of the load standard that the adopted code names.
             */
            windSpeed?: components["schemas"]["QuantityInput"] | null;
            /**
             * Design wind pressure
             * @description On the veneer at this opening.
             */
            windPressure?: components["schemas"]["QuantityInput"] | null;
            /**
             * Temperature range of the brick
             * @description From the coldest to the hottest face of the wall, as a difference.
             */
            temperatureRange?: components["schemas"]["QuantityInput"] | null;
            /**
             * Brick freezes while wet
             * @description True where wet brick freezes often enough to expand for it.
             */
            freezesWet?: boolean | null;
            /**
             * Rain in the storm
             * @description On a horizontal surface, over one hour.
             */
            rainIntensity?: components["schemas"]["QuantityInput"] | null;
            /**
             * Wind while it rains
             * @description Hourly mean, 10 m above open ground.
             */
            windSpeedInRain?: components["schemas"]["QuantityInput"] | null;
            /**
             * Wind off the wall
             * @description Between the wind and straight onto the wall; 0 when it blows straight on.
             */
            windAngle?: components["schemas"]["QuantityInput"] | null;
            /**
             * Driving rain in the free wind
             * @description Over a year or a spell, for this face of the building, before the factors of the wall.
             */
            airfieldIndex?: components["schemas"]["QuantityInput"] | null;
            /**
             * Rain from severe convective storms
             * @description Share of the yearly rain; the wall index does not hold where it is large.
             */
            convectiveRainShare?: components["schemas"]["QuantityInput"] | null;
            /**
             * Slope of the ground upwind
             * @description Rise over run.
             */
            topographySlope?: components["schemas"]["QuantityInput"] | null;
            /**
             * Nearest obstacle of the same height
             * @description A building, wall or trees in front of this face.
             */
            obstructionDistance?: components["schemas"]["LengthInput"] | null;
            /**
             * Face of the building
             * @description What kind of wall the opening is in, for the share of the driving rain that reaches it.
             */
            wallFace?: ("twoStoryGable" | "threeStoryGable" | "multistoryTop" | "multistoryBelow" | "twoStoryEaves" | "threeStoryEaves" | "twoStoryFlatRoofTop" | "twoStoryFlatRoofBelow") | null;
            /**
             * Seismic design category
             * @description As the adopted code assigns it.
             */
            seismicDesignCategory?: ("A" | "B" | "C" | "D0" | "D1" | "D2" | "D" | "E" | "F") | null;
            /**
             * Building
             * @description Some limits bind townhouses differently.
             */
            building?: ("oneOrTwoFamily" | "townhouse" | "other") | null;
        };
        Fact: {
            fact: string;
            title: string;
            help: string;
            kind: components["schemas"]["FactKind"];
            dimension: string | null;
            /** @description UCUM code of the unit in which it is kept. */
            unit: string | null;
            choices: string[];
            least: string | null;
            greatest: string | null;
            /** @description Has a left and a right, seen from outside. */
            perEnd: boolean;
            seenFrom: components["schemas"]["HoldPointId"];
            hiddenBy: components["schemas"]["HoldPointId"] | null;
            /** @description Rules that ask for it. */
            usedBy: string[];
        };
        /** @enum {string} */
        FactKind: "quantity" | "boolean" | "choice" | "section";
        FactPage: {
            items: components["schemas"]["Fact"][];
            /** @description Null on the last page. */
            nextCursor: string | null;
        };
        FactRecord: {
            fact: string;
            member: ("left" | "right") | null;
            governs: components["schemas"]["ReadingView"];
            earlier: components["schemas"]["ReadingView"][];
            /** @description An earlier reading says something else, beyond what the tapes can tell. */
            contradicted: boolean;
        };
        FactToCollect: {
            fact: string;
            title: string;
            hiddenBy: components["schemas"]["HoldPointId"] | null;
            /** @description The next operation hides it. */
            lastChance: boolean;
            /** @description A mandatory rule waits for it. */
            mandatory: boolean;
            /** @description Rules that this fact alone would settle. */
            decides: string[];
            /** @description Rules that need it and something else. */
            contributesTo: string[];
        };
        FactToMeasure: {
            fact: string;
            title: string;
            help: string;
            holdPoint: components["schemas"]["HoldPointId"];
            hiddenBy: components["schemas"]["HoldPointId"] | null;
            /** @description Rules that this fact alone would settle. */
            decides: string[];
            /** @description Rules that need it and something else. */
            contributesTo: string[];
        };
        /**
         * Fact value
         * @description A text with its unit, a number, a choice, true or false, or { value, unit, resolution }.
         */
        FactValue: boolean | components["schemas"]["LengthInput"];
        Finding: {
            rule: string;
            revision: number;
            title: string;
            statement: string;
            part: components["schemas"]["Part"];
            holdPoint: components["schemas"]["HoldPointId"];
            force: components["schemas"]["Force"];
            outcome: components["schemas"]["Outcome"];
            reason: components["schemas"]["Reason"] | null;
            /** @description What to do about an outcome that is not determined. */
            nextStep: string | null;
            fact: string | null;
            quantity: string | null;
            /** @description The end that decided, where there are two. */
            member: components["schemas"]["Member"] | null;
            measured: components["schemas"]["Measured"] | null;
            comparator: components["schemas"]["Comparator"];
            required: components["schemas"]["Required"];
            margin: components["schemas"]["Margin"] | null;
            members: components["schemas"]["MemberFinding"][];
            /** @description The tape cannot tell on which side of the limit the measurement lies. */
            withinResolution: boolean;
            /** @description The figure in the other unit system would decide otherwise. */
            differsByUnit: boolean;
            /** @description Facts that would have to be known. */
            missing: string[];
            /** @description Facts that made the rule not applicable. */
            decidedBy: string[];
            /** @description Facts from which the checked one was worked out. */
            derivedFrom: string[];
            remedy: components["schemas"]["Remedy"] | null;
            cautions: string[];
            evidence: components["schemas"]["Evidence"];
            lastReviewed: string;
            /** @description What to know where the adopted text prints two figures that contradict each other. It decides only where both agree. */
            printedConflict: string | null;
            disagreements: components["schemas"]["Disagreement"][];
            chain: components["schemas"]["ChainStep"][];
        };
        FindingChange: {
            rule: string;
            title: string;
            before: components["schemas"]["FindingState"] | null;
            after: components["schemas"]["FindingState"] | null;
        };
        FindingState: {
            outcome: components["schemas"]["Outcome"];
            reason: components["schemas"]["Reason"] | null;
            force: components["schemas"]["Force"];
            margin: components["schemas"]["Margin"] | null;
            required: string;
        };
        FlashingCutList: {
            place: components["schemas"]["FlashingPlace"];
            /** @description Width of the stock; null where it is not known. */
            girth: components["schemas"]["LengthView"] | null;
            stockLength: components["schemas"]["LengthView"];
            plan: components["schemas"]["CutList"];
        };
        FlashingPiece: {
            place: components["schemas"]["FlashingPlace"];
            length: components["schemas"]["LengthView"];
            girth: components["schemas"]["LengthView"] | null;
            count: number;
            references: string[];
        };
        /** @enum {string} */
        FlashingPlace: "head" | "sill";
        /**
         * @description mandatory: adopted law. recommended: a trade note, a guide or practice. informative: told, without a say in the verdict.
         * @enum {string}
         */
        Force: "mandatory" | "recommended" | "informative";
        /** @description What to look at and write down at one hold point. */
        Form: {
            /** @description The `$id` of the document: the same for the same form. */
            id: string;
            title: string;
            holdPoint: components["schemas"]["HoldPointId"];
            questions: number;
            schema: components["schemas"]["FormDocument"];
        };
        /** @description What became of one answer; `id` is the id of its entry. */
        FormAnswerResult: {
            id: string | null;
            outcome: components["schemas"]["EntryOutcome"];
            /** @description Its number in the journal of the project. */
            sequence: number | null;
            problems: components["schemas"]["EntryProblem"][];
            question: string;
            fact: string | null;
            member: ("left" | "right") | null;
        };
        /** @description What the form library made: the answers by question, in the sections of the form or without them. Choices in the words of the form; what is left out, null or empty is not known. */
        FormAnswers: {
            [key: string]: unknown;
        };
        FormAnswersAnswer: {
            /** @description One for each answer, in the order sent. */
            results: components["schemas"]["FormAnswerResult"][];
            /** @description Each opening that was touched, as it stands now. */
            openings: components["schemas"]["OpeningAfterPosting"][];
        };
        FormAnswersRequest: {
            /**
             * Format: uuid
             * @description Of this filling of the form, made by the client. The id of every answer follows from it, so that the same form sent twice is one.
             */
            id: string;
            /**
             * Format: date-time
             * @description When the form was filled, by the clock of the device.
             */
            at: string;
            /** @description A role or an opaque id, never the name of a person: "inspector", "crew-7". */
            by: string;
            /** @description Where the work stood. */
            holdPoint: components["schemas"]["HoldPointId"];
            method: components["schemas"]["ObservationMethod"];
            /** @description The unit of every length that is written without one; the one for which the form was read. */
            lengthUnit?: ("in" | "mm") | null;
            answers: components["schemas"]["FormAnswers"];
        };
        /** @description A JSON Schema document (2020-12), as a form library takes it. Sections and questions stand in the order in which to ask them, which `x-order` states too; the other annotations are told of in the README. */
        FormDocument: {
            [key: string]: unknown;
        };
        FormulaSource: {
            title: string;
            locator: string;
            evidence: components["schemas"]["Evidence"];
            readIn: string | null;
        };
        GivenInput: {
            /** @description A fact by its path, "opening.width"; or "rule …", "parameter …", "quantity …" with an id, as answers name their inputs. */
            from: string;
            value: components["schemas"]["GivenValue"];
        };
        /**
         * Given value
         * @description A text with its unit, a number, a choice, true or false, or a list [left, right].
         */
        GivenValue: string | number | boolean | (string | number | boolean | null)[];
        /** @description A waiver or a modification that the building official granted. */
        Grant: {
            entry: string;
            rule: string;
            kind: components["schemas"]["GrantKind"];
            grantedBy: string;
            instrument: components["schemas"]["Instrument"];
            expires: string | null;
            inForce: boolean;
            conditions: string | null;
        };
        /** @enum {string} */
        GrantKind: "waiver" | "modification";
        /** Head flashing */
        HeadFlashingInput: {
            /**
             * Head flashing present
             * @description A flashing of its own; the steel angle is not a flashing.
             */
            present?: boolean | null;
            /**
             * Flashing runs over the support
             * @description True when it lies on the angle or lintel, not on a course above.
             */
            overSupport?: boolean | null;
            /**
             * Head flashing material
             * @description What carries the water, not the drip or the primer.
             */
            material?: ("stainlessSteel" | "copper" | "leadCoatedCopper" | "copperComposite" | "galvanizedSteel" | "selfAdheredMembrane" | "epdm" | "pvc" | "aluminum" | "lead" | "polyethylene" | "asphaltFelt" | "buildingWrap") | null;
            /**
             * Head flashing thickness
             * @description Of the membrane or sheet; 40 mil for example.
             */
            thickness?: components["schemas"]["LengthInput"] | null;
            /**
             * Flashing past the jamb
             * @description From the edge of the masonry opening to the end of the pan.
             */
            extensionPastJamb?: (components["schemas"]["LengthInput"] | (components["schemas"]["LengthInput"] | null)[]) | null;
            /**
             * Flashing past the lintel end
             * @description Negative when it stops short of the end of the steel.
             */
            extensionPastSupport?: (components["schemas"]["LengthInput"] | (components["schemas"]["LengthInput"] | null)[]) | null;
            /**
             * End dam
             * @description The end of the flashing is turned up into a head joint.
             */
            endDamPresent?: (boolean | (boolean | null)[]) | null;
            /**
             * End dam height
             * @description 0 when there is no dam.
             */
            endDamHeight?: (components["schemas"]["LengthInput"] | (components["schemas"]["LengthInput"] | null)[]) | null;
            /**
             * End dam corners sealed
             * @description Folds or bonded corners are watertight.
             */
            endDamSealed?: (boolean | (boolean | null)[]) | null;
            /**
             * Upstand on the backing
             * @description How far the flashing runs up behind the brick.
             */
            upstand?: components["schemas"]["LengthInput"] | null;
            /**
             * Barrier over the flashing
             * @description How far the water-resistive barrier comes down over the upstand.
             */
            barrierLap?: components["schemas"]["LengthInput"] | null;
            /**
             * Top edge of the flashing
             * @description How the top edge is held and kept tight.
             */
            topEdge?: ("behindBarrier" | "terminationBar" | "reglet" | "bedJoint" | "sealantOnly" | "nailedOnly" | "loose") | null;
            /**
             * Front edge of the flashing
             * @description Where the front edge ends against the brick face.
             */
            frontEdge?: ("pastFace" | "flushWithFace" | "shortOfFace") | null;
            /**
             * Drip past the face
             * @description How far the flashing or its drip stands out; negative when it stops short.
             */
            projection?: components["schemas"]["LengthInput"] | null;
            /**
             * Drip turned down
             * @description From the horizontal.
             */
            dripAngle?: components["schemas"]["QuantityInput"] | null;
            /**
             * Flashing edge in the sun
             * @description True when the membrane itself, not a metal drip, is seen from outside.
             */
            exposedToSun?: boolean | null;
            /**
             * Pan slopes to the outside
             * @description False when level or sloping back.
             */
            slopesOut?: boolean | null;
            /**
             * Slope of the pan
             * @description Fall toward the outside; negative when it falls back.
             */
            slope?: components["schemas"]["QuantityInput"] | null;
            /**
             * Stock length of the head flashing
             * @description Length in which the flashing is delivered.
             */
            stockLength?: components["schemas"]["LengthInput"] | null;
            /**
             * Splices in the head flashing
             * @description 0 when it is one piece.
             */
            splices?: number | null;
            /**
             * Lap at splices
             * @description Least lap where two pieces meet.
             */
            spliceLap?: components["schemas"]["LengthInput"] | null;
            /**
             * Splices sealed
             * @description All laps bonded or sealed over their full width.
             */
            spliceSealed?: boolean | null;
            /**
             * Toe bedded past the opening
             * @description Sealant under the front edge where the flashing runs on over brick.
             */
            toeBedded?: (boolean | (boolean | null)[]) | null;
            /**
             * Flashing runs on past the opening
             * @description True for a shelf angle or band course; then the end dams are elsewhere.
             */
            continuousPastOpening?: boolean | null;
            /**
             * Flashing without holes or tears
             * @description Looked at just before the brick goes on.
             */
            intact?: boolean | null;
        };
        /** Head */
        HeadInput: {
            support?: components["schemas"]["HeadSupportInput"] | null;
            flashing?: components["schemas"]["HeadFlashingInput"] | null;
            weeps?: components["schemas"]["HeadWeepsInput"] | null;
        };
        /** Head support */
        HeadSupportInput: {
            /**
             * What carries the brick
             * @description None when the brick rests on the frame.
             */
            kind?: ("looseSteelAngle" | "shelfAngle" | "angleFixedToFraming" | "precastLintel" | "reinforcedMasonryLintel" | "masonryArch" | "woodMember" | "none") | null;
            /**
             * Angle
             * @description Vertical leg, horizontal leg, thickness; put a 2 before a pair.
             */
            section?: components["schemas"]["SectionInput"] | null;
            /**
             * Long leg
             * @description Which way the longer leg stands.
             */
            longLeg?: ("vertical" | "horizontal") | null;
            /**
             * Side restraint of the lintel
             * @description Continuous where brick or concrete holds the steel along its length.
             */
            lateralRestraint?: ("continuous" | "none") | null;
            /**
             * Yield stress of the steel
             * @description Least yield stress of the grade; 36 ksi for A36.
             */
            yieldStress?: components["schemas"]["QuantityInput"] | null;
            /**
             * Lintel depth
             * @description Height of a masonry, concrete or stone lintel.
             */
            depth?: components["schemas"]["LengthInput"] | null;
            /**
             * Lintel width
             * @description Of a masonry, concrete or stone lintel, through the wall.
             */
            width?: components["schemas"]["LengthInput"] | null;
            /**
             * Weight of the lintel
             * @description Per length, as its maker states it.
             */
            lineWeight?: components["schemas"]["QuantityInput"] | null;
            /**
             * Allowable moment of the lintel
             * @description As its maker or its engineer states it.
             */
            allowableMoment?: components["schemas"]["QuantityInput"] | null;
            /**
             * Allowable shear of the lintel
             * @description As its maker or its engineer states it.
             */
            allowableShear?: components["schemas"]["QuantityInput"] | null;
            /**
             * Moment of inertia of the lintel
             * @description Of the section that bends, as its maker or its engineer states it.
             */
            momentOfInertia?: components["schemas"]["QuantityInput"] | null;
            /**
             * Elastic modulus of the lintel
             * @description Of its material, as its maker or its engineer states it.
             */
            elasticModulus?: components["schemas"]["QuantityInput"] | null;
            /**
             * Lintel length
             * @description Cut length of the steel.
             */
            length?: components["schemas"]["LengthInput"] | null;
            /**
             * Bearing on the masonry
             * @description Length of lintel that rests on the brick beside the opening.
             */
            bearing?: (components["schemas"]["LengthInput"] | (components["schemas"]["LengthInput"] | null)[]) | null;
            /**
             * Seat of the bearing
             * @description What the end of the lintel rests on.
             */
            bearingSeat?: (("solidMasonry" | "coredUnit" | "mortarBed" | "slipPlane" | "frame") | (("solidMasonry" | "coredUnit" | "mortarBed" | "slipPlane" | "frame") | null)[]) | null;
            /**
             * Gap at the lintel end
             * @description Space between the end of the steel and the next brick.
             */
            endGap?: (components["schemas"]["LengthInput"] | (components["schemas"]["LengthInput"] | null)[]) | null;
            /**
             * Corrosion protection of the steel
             * @description As delivered; cut ends are coated the same way.
             */
            protection?: ("none" | "shopPrimed" | "hotDipGalvanized" | "stainlessSteel" | "weatheringSteel") | null;
            /**
             * Brick past the support
             * @description How far the brick stands out in front of the leg it rests on.
             */
            veneerOverhang?: components["schemas"]["LengthInput"] | null;
            /**
             * Lintel to frame
             * @description Between the underside of the lintel and the frame head.
             */
            gapToFrame?: components["schemas"]["LengthInput"] | null;
            /**
             * Days shored
             * @description How long the lintel was propped after the brick was laid.
             */
            shoringDays?: number | null;
            /**
             * Reinforced bed joints above
             * @description Bed joints over the opening with joint reinforcement; 0 when none.
             */
            jointReinforcementCourses?: number | null;
        };
        /** Weeps at the head */
        HeadWeepsInput: {
            /**
             * Kind of weep at the head
             * @description A rope that is pulled out leaves a tube; a rope left in place is a wick.
             */
            kind?: ("openHeadJoint" | "cellVent" | "mesh" | "tube" | "wick" | "rope" | "none") | null;
            /**
             * Weep spacing at the head
             * @description Greatest distance between two weeps, center to center.
             */
            spacing?: components["schemas"]["LengthInput"] | null;
            /**
             * Weep size at the head
             * @description Least clear diameter or joint width.
             */
            diameter?: components["schemas"]["LengthInput"] | null;
            /**
             * Height of an open weep at the head
             * @description Of an open head joint or vent; the whole course when left out.
             */
            openHeight?: components["schemas"]["LengthInput"] | null;
            /**
             * Number of weeps at the head
             * @description Counted over this opening.
             */
            count?: number | null;
            /**
             * Weeps on the flashing at the head
             * @description True when the weep sits directly on the flashing, not a course above.
             */
            onFlashing?: boolean | null;
            /**
             * Weeps open at the head
             * @description False when mortar, paint or sealant closes any of them.
             */
            open?: boolean | null;
            /**
             * End weep to end dam at the head
             * @description From the last weep to the end of the flashing.
             */
            endWeepToDam?: (components["schemas"]["LengthInput"] | (components["schemas"]["LengthInput"] | null)[]) | null;
        };
        HealthStatus: {
            /** @enum {string} */
            status: "live" | "ready" | "stopping";
            /** @description The release of the catalog that is in use, once ready. */
            release?: string;
        };
        HoldPoint: {
            id: components["schemas"]["HoldPointId"];
            order: number;
            title: string;
            kind: components["schemas"]["HoldPointKind"];
            hides: string | null;
            /** @description Facts first seen here. */
            facts: string[];
            /** @description Rules to be seen here. */
            rules: string[];
        };
        /**
         * Hold point
         * @description A stage of the work, in the order of the work.
         * @enum {string}
         */
        HoldPointId: "detailReview" | "submittalsAndMockUp" | "backingReady" | "barrierAndPan" | "unitSet" | "baseFlashing" | "sillFlashing" | "jambRise" | "lintelSet" | "headFlashing" | "headFirstCourse" | "wallAbove" | "sealantAndCleaning" | "handover" | "inService";
        /** @enum {string} */
        HoldPointKind: "hold" | "witness" | "selfCheck";
        HoldPointList: {
            items: components["schemas"]["HoldPoint"][];
        };
        HoldPointStatus: {
            holdPoint: components["schemas"]["HoldPointId"];
            title: string;
            pass: number;
            fail: number;
            notDetermined: number;
            notApplicable: number;
            /** @description Openings at which every mandatory rule to be seen here is decided, and met or waived. Where no mandatory rule is to be seen, no opening counts as ready or as not ready. */
            ready: number;
            notReady: number;
            /** @description Openings at which somebody has signed it off, ready or with a reason. */
            signedOff: number;
        };
        HourlyFileSummary: {
            hours: number;
            expectedHours: number;
            missingHours: number;
            from: string;
            to: string;
            isTypicalYear: boolean;
            ofOtherStations: number;
            malformed: components["schemas"]["MalformedLines"];
        };
        /**
         * @description An EnergyPlus weather file, or a table with a line of column names.
         * @enum {string}
         */
        HourlyFormat: "energyPlus" | "table";
        HourlyTableInput: {
            separator?: components["schemas"]["ColumnSeparator"] | null;
            /** @description Lines above the line of column names. */
            linesBeforeHeader?: number | null;
            time: components["schemas"]["TimeColumnsInput"];
            rain: components["schemas"]["RainColumnInput"];
            wind: components["schemas"]["WindColumnInput"];
            direction: components["schemas"]["DirectionColumnInput"];
            temperature?: components["schemas"]["TemperatureColumnInput"] | null;
            station?: components["schemas"]["StationInput"] | null;
            /** @description What the file writes where it has no reading. */
            missing?: string[] | null;
            dryHoursLeftOut?: boolean | null;
        };
        ImpactExample: {
            /** @description The mark of the opening; of a kept one that the token may not read, only that it is one. */
            reference: string;
            asOf: string;
            verdictBefore: components["schemas"]["Verdict"];
            verdictAfter: components["schemas"]["Verdict"];
            findings: components["schemas"]["FindingChange"][];
        };
        /** @description Openings by outcome. */
        ImportCounts: {
            recorded: number;
            alreadyRecorded: number;
            unchanged: number;
            heldBack: number;
            refused: number;
        };
        /**
         * @description On record now; by this import since earlier; the design on record is the same; nothing wrong, and not taken because of other rows or because it was only to be checked; wrong.
         * @enum {string}
         */
        ImportOutcome: "recorded" | "alreadyRecorded" | "unchanged" | "heldBack" | "refused";
        ImportProblem: {
            /** @description As a spreadsheet counts: the first row of the sheet is 1. */
            row: number;
            /** @description The header of the column; null where it is about the whole row. */
            column: string | null;
            code: string;
            detail: string;
        };
        ImportedOpening: {
            row: number;
            opening: string;
            reference: string;
            /** @description The id of the design entry; null where there is none to make. */
            entry: string | null;
            outcome: components["schemas"]["ImportOutcome"];
            /** @description Of the opening as it stands now, where it was recorded now. */
            verdict: components["schemas"]["Verdict"] | null;
        };
        /** @enum {string} */
        InputKind: "fact" | "rule" | "parameter" | "table" | "quantity";
        /** Inspections passed */
        InspectedInput: {
            /**
             * Inspection passed: Submittals, meeting before the work, mock-up
             * @description True when whoever inspects there has signed for it; false when it was missed or not passed.
             */
            submittalsAndMockUp?: boolean | null;
            /**
             * Inspection passed: Backing, rough opening and ledge ready
             * @description True when whoever inspects there has signed for it; false when it was missed or not passed.
             */
            backingReady?: boolean | null;
            /**
             * Inspection passed: Barrier and sill pan in, window not yet
             * @description True when whoever inspects there has signed for it; false when it was missed or not passed.
             */
            barrierAndPan?: boolean | null;
            /**
             * Inspection passed: Window or door set, jamb and head membranes on
             * @description True when whoever inspects there has signed for it; false when it was missed or not passed.
             */
            unitSet?: boolean | null;
            /**
             * Inspection passed: Base flashing and first courses
             * @description True when whoever inspects there has signed for it; false when it was missed or not passed.
             */
            baseFlashing?: boolean | null;
            /**
             * Inspection passed: Sill flashing in, sill units not yet
             * @description True when whoever inspects there has signed for it; false when it was missed or not passed.
             */
            sillFlashing?: boolean | null;
            /**
             * Inspection passed: Veneer risen from sill to head
             * @description True when whoever inspects there has signed for it; false when it was missed or not passed.
             */
            jambRise?: boolean | null;
            /**
             * Inspection passed: Lintel on its bearings
             * @description True when whoever inspects there has signed for it; false when it was missed or not passed.
             */
            lintelSet?: boolean | null;
            /**
             * Inspection passed: Head flashing complete
             * @description True when whoever inspects there has signed for it; false when it was missed or not passed.
             */
            headFlashing?: boolean | null;
            /**
             * Inspection passed: First course on the head flashing
             * @description True when whoever inspects there has signed for it; false when it was missed or not passed.
             */
            headFirstCourse?: boolean | null;
            /**
             * Inspection passed: Wall above, to the next support
             * @description True when whoever inspects there has signed for it; false when it was missed or not passed.
             */
            wallAbove?: boolean | null;
            /**
             * Inspection passed: Sealant joints and cleaning
             * @description True when whoever inspects there has signed for it; false when it was missed or not passed.
             */
            sealantAndCleaning?: boolean | null;
            /**
             * Inspection passed: Final and handover
             * @description True when whoever inspects there has signed for it; false when it was missed or not passed.
             */
            handover?: boolean | null;
        };
        Instrument: {
            /** @enum {string} */
            kind: "act" | "administrativeRule" | "ordinance" | "resolution" | "notice";
            number: string;
            section?: string;
            /** Format: date */
            adopted: string;
            href?: string;
        };
        InstrumentInput: components["schemas"]["Instrument"];
        /** Jambs and sealant */
        JambsInput: {
            /**
             * Sealant joint width
             * @description Between the frame and the brick.
             */
            sealantWidth?: components["schemas"]["LengthInput"] | null;
            /**
             * Sealant joint depth
             * @description At the middle of the joint.
             */
            sealantDepth?: components["schemas"]["LengthInput"] | null;
            /**
             * Backer rod
             * @description Closed-cell rod or bond-breaker tape behind the sealant.
             */
            backerRod?: boolean | null;
            /**
             * Sealant movement class
             * @description ASTM C920 class on the label.
             */
            sealantClass?: ("class12_5" | "class25" | "class35" | "class50" | "class100_50") | null;
            /**
             * Joint of brick to lintel left open
             * @description False when sealant closes the line where the head drains.
             */
            headJointLeftOpen?: boolean | null;
            /**
             * Membrane on the jamb
             * @description Flashing or membrane along the side of the rough opening.
             */
            membranePresent?: (boolean | (boolean | null)[]) | null;
            /**
             * Brick return clear of the backing
             * @description False when a brick return or mortar touches the sheathing or the frame.
             */
            returnClear?: (boolean | (boolean | null)[]) | null;
        };
        JournalEntry: {
            sequence: number;
            id: string;
            opening: string;
            kind: string;
            digest: string;
            /** @description What the service found when it took the entry in, as JSON text. */
            judged: string | null;
            chain: string;
            receivedAt: string;
            receivedBy: string;
            posting: string;
            /** @description The entry as JSON text. */
            content: string;
        };
        JournalPage: {
            items: components["schemas"]["JournalEntry"][];
            /** @description The links of these entries were worked out anew and hold. */
            holds: boolean;
        };
        Jurisdiction: {
            jurisdiction: string;
            name: string;
            level: components["schemas"]["JurisdictionLevel"];
            within: string | null;
            localAmendment: components["schemas"]["LocalAmendmentPolicy"];
            note: string | null;
            adoptions: components["schemas"]["Adoption"][];
            amendments: components["schemas"]["AmendmentSummary"][];
        };
        /** @enum {string} */
        JurisdictionLevel: "country" | "state" | "county" | "city" | "district";
        JurisdictionPage: {
            items: components["schemas"]["Jurisdiction"][];
            /** @description Null on the last page. */
            nextCursor: string | null;
        };
        KeptEntry: {
            entry: string;
            kind: components["schemas"]["EntryKind"];
            at: string;
            by: string;
            /** @description The entry as JSON text. */
            content: string;
        };
        /**
         * Length
         * @description A length as people write it: "3 7/8 in", "4'-6 1/2\"", "98 mm", or { value, unit, resolution }. A bare number takes the document's lengthUnit.
         */
        LengthInput: string | number | {
            value: number | string;
            /** @enum {string} */
            unit: "[in_i]" | "[ft_i]" | "in" | "ft" | "mm" | "cm" | "m";
            /** @description What the tape can tell, in the same unit. */
            resolution?: number;
        };
        LengthView: {
            inchPound: string;
            si: string;
            nanometres: number;
        };
        /** @description Identical lintels in one line; `length` is the least that bears enough at both ends. To be confirmed by a licensed professional. */
        LintelLine: {
            mark: string;
            count: number;
            /** @description The openings it is for, by id. */
            references: string[];
            width: components["schemas"]["LengthView"] | null;
            height: components["schemas"]["LengthView"] | null;
            support: string | null;
            /** @description The angle as described, else the lightest that carries the brick. */
            section: string | null;
            chosen: components["schemas"]["SectionChosen"];
            length: components["schemas"]["LengthView"];
            /** @description What the least length rests on at each end when it is set dead center. */
            bearing: components["schemas"]["LengthView"] | null;
            described: components["schemas"]["DescribedLintel"];
            /** @description Of one piece of the least length; null where it could not be computed. */
            weight: components["schemas"]["WeightView"] | null;
        };
        LintelPiece: {
            section: string | null;
            chosen: components["schemas"]["SectionChosen"];
            length: components["schemas"]["LengthView"];
            count: number;
            references: string[];
        };
        /** @enum {string} */
        LocalAmendmentPolicy: "prohibited" | "moreStringentOnly" | "permitted";
        MalformedLine: {
            line: number;
            why: string;
        };
        MalformedLines: {
            count: number;
            first: components["schemas"]["MalformedLine"][];
        };
        MandatoryFailure: {
            opening: string;
            reference: string | null;
            rule: string;
            title: string;
            part: components["schemas"]["Part"];
            holdPoint: components["schemas"]["HoldPointId"];
            /** @description Which end, seen from outside; null where there are no two. */
            member: ("left" | "right") | null;
            measured: components["schemas"]["Measured"] | null;
            required: components["schemas"]["Required"];
            margin: components["schemas"]["Margin"] | null;
            remedy: components["schemas"]["Remedy"] | null;
            cautions: string[];
            evidence: components["schemas"]["Evidence"];
            chain: components["schemas"]["ChainStep"][];
            withinResolution: boolean;
            /** @description The official has granted a waiver or a modification that is in force. */
            waived: boolean;
            /** @description The work has hidden the place, so that the remedy after cover-up is the one to take; null where a computed quantity is judged. */
            covered: boolean | null;
            /** @description The reading that says so; null where it comes from the drawing or is worked out. */
            seen: components["schemas"]["SeenBy"] | null;
        };
        /** @description Spare when positive, short when negative, for every comparator. */
        Margin: {
            inchPound: string;
            si: string;
        };
        Measured: {
            /** @description As it was given, or as it was worked out. */
            text: string;
            inchPound: string | null;
            si: string | null;
            /** @description Lengths only. */
            nanometres: number | null;
        };
        /**
         * @description Which end, seen from outside.
         * @enum {string}
         */
        Member: "left" | "right";
        MemberFinding: {
            member: components["schemas"]["Member"] | null;
            outcome: components["schemas"]["Outcome"];
            measured: components["schemas"]["Measured"] | null;
            margin: components["schemas"]["Margin"] | null;
        };
        /**
         * @description Over all looks; open: it was missed, and whether it still is cannot be told.
         * @enum {string}
         */
        MissStatus: "new" | "unchanged" | "reopened" | "open" | "settled";
        ModificationSummary: {
            modification: string;
            kind: string;
            rule: string;
        };
        /** @description A rule that was missed, with what was done about it. */
        NonConformance: {
            /** @description The same for the same rule at the same end of the same opening, however often it is looked at. */
            fingerprint: string;
            rule: string;
            title: string;
            member: ("left" | "right") | null;
            force: components["schemas"]["Force"] | null;
            status: components["schemas"]["MissStatus"];
            state: components["schemas"]["NonConformanceState"];
            since: string;
            changed: string;
            measured: string | null;
            required: string | null;
            /** @description Later work has hidden it. */
            covered: boolean;
            /** @description How to put it right as the work stands now. */
            remedy: string | null;
            cautions: string[];
            chosen: components["schemas"]["ChosenRemedy"] | null;
            verification: components["schemas"]["VerificationView"] | null;
            grant: components["schemas"]["Grant"] | null;
        };
        /**
         * @description On its way to being settled. Only a reading that meets the rule settles it; saidMended asks for that reading.
         * @enum {string}
         */
        NonConformanceState: "open" | "remedyChosen" | "saidMended" | "notMended" | "waived" | "settled";
        /** @description On record, and not described far enough to be evaluated. It is in no other count. */
        NotEvaluatedOpening: {
            opening: string;
            reference: string | null;
            holdPoint: components["schemas"]["HoldPointId"] | null;
            problems: components["schemas"]["DescriptionProblem"][];
        };
        ObservationInput: {
            /** @description The path of the fact: "head.support.bearing". */
            fact: string;
            /** @description Which end, seen from outside; both when left out. */
            member?: ("left" | "right") | null;
            value: components["schemas"]["FactValue"];
            /** @description The unit of a length that is written without one. */
            lengthUnit?: ("in" | "mm") | null;
            method: components["schemas"]["ObservationMethod"];
            /** @description Where the work stood when it was seen. */
            holdPoint: components["schemas"]["HoldPointId"];
        };
        /**
         * @description Looked at or measured; told by somebody; tried out.
         * @enum {string}
         */
        ObservationMethod: "examine" | "interview" | "test";
        /** @description A finding that is not met, or not determined, without the way to it. */
        OpenFinding: {
            rule: string;
            title: string;
            part: components["schemas"]["Part"];
            holdPoint: components["schemas"]["HoldPointId"];
            force: components["schemas"]["Force"];
            outcome: components["schemas"]["Outcome"];
            reason: components["schemas"]["Reason"] | null;
            /** @description What to do about an outcome that is not determined. */
            nextStep: string | null;
            /** @description The end that decided, where there are two. */
            member: components["schemas"]["Member"] | null;
            measured: components["schemas"]["Measured"] | null;
            required: components["schemas"]["Required"];
            margin: components["schemas"]["Margin"] | null;
            /** @description Facts that would have to be known. */
            missing: string[];
            cautions: string[];
            evidence: components["schemas"]["Evidence"];
        };
        OpeningAfterPosting: {
            standing: components["schemas"]["OpeningStanding"];
            /** @description What comes out otherwise than before this posting. */
            changed: components["schemas"]["OutcomeChange"][];
        };
        /** Opening */
        OpeningGeometryInput: {
            /**
             * Kind of opening
             * @description What fills the opening.
             * @enum {string}
             */
            kind: "window" | "door" | "slidingDoor" | "garageDoor" | "louver" | "vent" | "recess";
            /**
             * Masonry opening width
             * @description Clear width between the brick jambs, not the frame or the rough opening.
             */
            width: components["schemas"]["LengthInput"];
            /**
             * Masonry opening height
             * @description Clear height from the sill to the underside of the head support.
             */
            height: components["schemas"]["LengthInput"];
            /**
             * Shape of the head
             * @description Flat also for a soldier course carried by steel.
             */
            headShape?: ("flat" | "jackArch" | "segmentalArch" | "semicircularArch" | "otherArch") | null;
            /**
             * Head rise
             * @description Height of an arched head above its springing; leave out for a flat head.
             */
            headRise?: components["schemas"]["LengthInput"] | null;
            /**
             * Units side by side
             * @description How many windows share this one masonry opening.
             */
            gangedUnits?: number | null;
            /**
             * Mullion width
             * @description Width of the cover between two ganged units.
             */
            mullionWidth?: components["schemas"]["LengthInput"] | null;
            /**
             * Sill above finished grade
             * @description From finished grade up to the top of the sill at the face; negative in a window well.
             */
            sillAboveGrade?: components["schemas"]["LengthInput"] | null;
            /**
             * Frame behind the brick face
             * @description From the brick face back to the frame; 0 when flush.
             */
            frameSetback?: components["schemas"]["LengthInput"] | null;
            /**
             * Masonry beside the opening
             * @description Unbroken brick from the jamb to the next opening, corner or movement joint.
             */
            pierWidth?: (components["schemas"]["LengthInput"] | (components["schemas"]["LengthInput"] | null)[]) | null;
            /**
             * Opening runs round a corner
             * @description True when a side of the opening has no masonry jamb.
             */
            atCorner?: boolean | null;
            /**
             * Eave overhang above
             * @description How far the eave stands out over this opening; 0 when there is none.
             */
            eaveOverhang?: components["schemas"]["LengthInput"] | null;
            /**
             * Head below the eave
             * @description From the top of the opening up to the underside of the eave.
             */
            headToEave?: components["schemas"]["LengthInput"] | null;
        };
        /** Opening description */
        OpeningInput: {
            /** @description The caller's own mark for the opening. */
            reference?: string | null;
            /** @description Whether the facts come from drawings or from the wall. */
            basis?: ("asDesigned" | "asBuilt") | null;
            /** @description The unit of every length that is written without one. */
            lengthUnit?: ("in" | "mm") | null;
            /** @description What the tape can tell, for every measured length: "1/16 in". */
            lengthResolution?: string | null;
            opening: components["schemas"]["OpeningGeometryInput"];
            wall?: components["schemas"]["WallInput"] | null;
            head?: components["schemas"]["HeadInput"] | null;
            sill?: components["schemas"]["SillInput"] | null;
            jambs?: components["schemas"]["JambsInput"] | null;
            ties?: components["schemas"]["TiesInput"] | null;
            barrier?: components["schemas"]["BarrierInput"] | null;
            base?: components["schemas"]["BaseInput"] | null;
            exposure?: components["schemas"]["ExposureInput"] | null;
            process?: components["schemas"]["ProcessInput"] | null;
        };
        OpeningPage: {
            items: components["schemas"]["OpeningStanding"][];
            /** @description Null on the last page. */
            nextCursor: string | null;
        };
        /** @description Mandatory rules, by id, that stand in the way of going on past a hold point; and those that are not met and waived. */
        OpeningReadiness: {
            holdPoint: components["schemas"]["HoldPointId"];
            ready: boolean;
            signedOff: boolean;
            undecided: string[];
            notMet: string[];
            waived: string[];
        };
        OpeningRecord: {
            project: string;
            standing: components["schemas"]["OpeningStanding"];
            /** @description What the next revision of the design has to name. */
            designVersion: string | null;
            facts: components["schemas"]["FactRecord"][];
            /** @description Where what was seen is not what was drawn. */
            builtOtherwise: components["schemas"]["BuiltOtherwise"][];
            /** @description Every miss there ever was, as it stands now. */
            nonConformances: components["schemas"]["NonConformance"][];
            signOffs: components["schemas"]["SignOffView"][];
            /** @description Waivers and modifications, in force or run out. */
            grants: components["schemas"]["Grant"][];
            /** @description All but observations, in the order in which they arrived; what was corrected, too. */
            entries: components["schemas"]["KeptEntry"][];
        };
        OpeningStanding: {
            opening: string;
            reference: string | null;
            /** @description As far as the work is known to stand. */
            holdPoint: components["schemas"]["HoldPointId"] | null;
            /** @description Of the opening as seen, and as drawn where nobody has looked yet; null while it is not described far enough. */
            verdict: components["schemas"]["Verdict"] | null;
            /** @description The same with waivers and modifications in force counted in. */
            verdictAsGranted: components["schemas"]["Verdict"] | null;
            /** @description Mandatory rules that are not met, waived or not. */
            notMet: string[];
            /** @description Rules not met or not decided that a waiver or a modification in force covers. */
            waived: string[];
            /** @description Facts of which two readings disagree. */
            contradicted: string[];
            /** @description What the next operation hides: look at it now. */
            beforeCoverUp: components["schemas"]["FactToMeasure"][];
            /** @description What to look at next, most telling first. */
            nextToMeasure: components["schemas"]["FactToMeasure"][];
            /** @description What has to be known before it can be evaluated at all. */
            missing: string[];
        };
        /** @enum {string} */
        Outcome: "pass" | "fail" | "notDetermined" | "notApplicable";
        OutcomeAtSignOff: {
            rule: string;
            member: ("left" | "right") | null;
            outcome: components["schemas"]["Outcome"];
        };
        OutcomeChange: {
            rule: string;
            title: string;
            member: ("left" | "right") | null;
            /** @description Null where it was not judged before. */
            before: components["schemas"]["Outcome"] | null;
            after: components["schemas"]["Outcome"];
        };
        /**
         * @description "absent" where the rule is not among those of the place.
         * @enum {string}
         */
        OutcomeOrAbsent: "pass" | "fail" | "notDetermined" | "notApplicable" | "absent";
        OutcomeTransition: {
            from: components["schemas"]["OutcomeOrAbsent"];
            to: components["schemas"]["OutcomeOrAbsent"];
            count: number;
        };
        /** @enum {string} */
        Part: "head" | "sill" | "jambs" | "wall" | "ties" | "barrier" | "base";
        /** @description Findings of all rules of a part, over all openings that were evaluated. */
        PartStatus: {
            part: components["schemas"]["Part"];
            pass: number;
            fail: number;
            notDetermined: number;
            notApplicable: number;
        };
        /** Opening */
        PartialGeometryInput: {
            kind?: ("window" | "door" | "slidingDoor" | "garageDoor" | "louver" | "vent" | "recess") | null;
            width?: components["schemas"]["LengthInput"] | null;
            height?: components["schemas"]["LengthInput"] | null;
            /**
             * Shape of the head
             * @description Flat also for a soldier course carried by steel.
             */
            headShape?: ("flat" | "jackArch" | "segmentalArch" | "semicircularArch" | "otherArch") | null;
            /**
             * Head rise
             * @description Height of an arched head above its springing; leave out for a flat head.
             */
            headRise?: components["schemas"]["LengthInput"] | null;
            /**
             * Units side by side
             * @description How many windows share this one masonry opening.
             */
            gangedUnits?: number | null;
            /**
             * Mullion width
             * @description Width of the cover between two ganged units.
             */
            mullionWidth?: components["schemas"]["LengthInput"] | null;
            /**
             * Sill above finished grade
             * @description From finished grade up to the top of the sill at the face; negative in a window well.
             */
            sillAboveGrade?: components["schemas"]["LengthInput"] | null;
            /**
             * Frame behind the brick face
             * @description From the brick face back to the frame; 0 when flush.
             */
            frameSetback?: components["schemas"]["LengthInput"] | null;
            /**
             * Masonry beside the opening
             * @description Unbroken brick from the jamb to the next opening, corner or movement joint.
             */
            pierWidth?: (components["schemas"]["LengthInput"] | (components["schemas"]["LengthInput"] | null)[]) | null;
            /**
             * Opening runs round a corner
             * @description True when a side of the opening has no masonry jamb.
             */
            atCorner?: boolean | null;
            /**
             * Eave overhang above
             * @description How far the eave stands out over this opening; 0 when there is none.
             */
            eaveOverhang?: components["schemas"]["LengthInput"] | null;
            /**
             * Head below the eave
             * @description From the top of the opening up to the underside of the eave.
             */
            headToEave?: components["schemas"]["LengthInput"] | null;
        };
        /** Part of an opening description */
        PartialOpeningInput: {
            /** @description The caller's own mark for the opening. */
            reference?: string | null;
            /** @description Whether the facts come from drawings or from the wall. */
            basis?: ("asDesigned" | "asBuilt") | null;
            /** @description The unit of every length that is written without one. */
            lengthUnit?: ("in" | "mm") | null;
            /** @description What the tape can tell, for every measured length: "1/16 in". */
            lengthResolution?: string | null;
            opening?: components["schemas"]["PartialGeometryInput"] | null;
            wall?: components["schemas"]["WallInput"] | null;
            head?: components["schemas"]["HeadInput"] | null;
            sill?: components["schemas"]["SillInput"] | null;
            jambs?: components["schemas"]["JambsInput"] | null;
            ties?: components["schemas"]["TiesInput"] | null;
            barrier?: components["schemas"]["BarrierInput"] | null;
            base?: components["schemas"]["BaseInput"] | null;
            exposure?: components["schemas"]["ExposureInput"] | null;
            process?: components["schemas"]["ProcessInput"] | null;
        };
        /** @description No bar holds it: splice it from shorter pieces first. */
        PieceTooLong: {
            reference: string;
            length: components["schemas"]["LengthView"];
            longest: components["schemas"]["LengthView"];
        };
        /**
         * Problem details (RFC 9457)
         * @example {
         *       "type": "https://wythe.example/problems/invalidInput",
         *       "title": "The input cannot be used as it is",
         *       "status": 422,
         *       "detail": "/opening/opening/width \"48\" has no unit.",
         *       "instance": "urn:request:0192f3c1-5a51-7c8f-8b8e-2f3d0e6a9b10",
         *       "code": "invalidInput",
         *       "errors": [
         *         {
         *           "code": "unitMissing",
         *           "pointer": "/opening/opening/width",
         *           "detail": "\"48\" has no unit."
         *         }
         *       ]
         *     }
         */
        Problem: {
            /** @description Address of a page that explains the code. */
            type: string;
            title: string;
            status: number;
            detail: string;
            /** @description The request, as the log knows it. */
            instance: string;
            code: components["schemas"]["ProblemCode"];
            errors: components["schemas"]["ProblemError"][];
            /** @description The quotas that were used up, by their names in RateLimit-Policy. */
            "violated-policies"?: string[];
        };
        /**
         * @description The last part of `type`.
         * @enum {string}
         */
        ProblemCode: "invalidInput" | "placeMissing" | "unknownJurisdiction" | "unknownEdition" | "severalCodesAdopted" | "catalogFault" | "notFound" | "unauthenticated" | "forbidden" | "idTaken" | "versionMissing" | "versionStale" | "recordBusy" | "amendmentRefused" | "alreadyAdopted" | "catalogGone" | "webhookDisabled" | "keyReused" | "stillRunning" | "quotaExceeded" | "malformed" | "methodNotAllowed" | "notAcceptable" | "unsupportedMediaType" | "tooLarge" | "addressTooLong" | "headersTooLarge" | "tooSlow" | "unavailable" | "identityProviderSilent" | "internal";
        ProblemError: {
            code: string;
            /** @description JSON Pointer (RFC 6901) into what was sent. */
            pointer: string;
            detail: string;
        };
        /** Inspections and submittals */
        ProcessInput: {
            inspected?: components["schemas"]["InspectedInput"] | null;
            submitted?: components["schemas"]["SubmittedInput"] | null;
        };
        Project: {
            project: string;
            title: string;
            jurisdiction: string | null;
            asOf: string;
            edition: string | null;
            publication: string | null;
            /** @description Changes with the content; a change has to name it. */
            version: string;
            createdAt: string;
            changedAt: string;
        };
        ProjectChange: {
            title: string;
            /** @description Whose rules apply. Left out with an edition, the published texts alone are meant. */
            jurisdiction?: string | null;
            /**
             * Format: date
             * @description The permit application date, which selects what was in force.
             */
            asOf: string;
            edition?: string | null;
            /** @description Which code is meant where several are adopted. */
            publication?: string | null;
        };
        ProjectPage: {
            items: components["schemas"]["Project"][];
            /** @description Null on the last page. */
            nextCursor: string | null;
        };
        ProjectRequest: {
            /**
             * Format: uuid
             * @description Made by the client, so that the same thing sent twice is one.
             */
            id: string;
            title: string;
            /** @description Whose rules apply. Left out with an edition, the published texts alone are meant. */
            jurisdiction?: string | null;
            /**
             * Format: date
             * @description The permit application date, which selects what was in force.
             */
            asOf: string;
            edition?: string | null;
            /** @description Which code is meant where several are adopted. */
            publication?: string | null;
        };
        Publication: {
            publication: string;
            title: string;
            publisher: string;
            kind: components["schemas"]["PublicationKind"];
            editions: components["schemas"]["PublicationEdition"][];
        };
        PublicationEdition: {
            id: string;
            edition: string;
            issued: string;
            references: string[];
            note: string | null;
            /** @description Rules with a limit of this edition. */
            rules: number;
        };
        /** @enum {string} */
        PublicationKind: "modelCode" | "standard" | "tradeNote" | "guideSpecification" | "regulation" | "textbook" | "article" | "practice";
        PublicationPage: {
            items: components["schemas"]["Publication"][];
            /** @description Null on the last page. */
            nextCursor: string | null;
        };
        QualityFinding: {
            code: string;
            /** @description True where it keeps an index from being computed. */
            decides: boolean;
            text: string;
        };
        QuantityCell: {
            text: string;
            amount: number | null;
        };
        QuantityColumn: {
            title: string;
            /** @description UCUM code of the amounts in this column. */
            unit: string | null;
        };
        QuantityDetail: {
            quantity: string;
            title: string;
            part: components["schemas"]["Part"];
            /** @description UCUM code of the unit in which it is answered; null for a text. */
            unit: string | null;
            /** @description What a text may be, where only some are possible. */
            choices: string[];
            formula: string;
            /** @description Only orders or compares; not a figure to build by. */
            indicative: boolean;
            needsLicensedProfessional: boolean;
            /** @description False where it is long to compute or to read, and has to be asked for by itself. */
            inEvaluations: boolean;
            /** @description What it computes with itself. */
            asks: components["schemas"]["QuantityInputView"][];
            /** @description Every fact that it or a quantity it builds on may ask for. */
            facts: string[];
            /** @description Of the formula; figures bring their own. */
            sources: components["schemas"]["FormulaSource"][];
        };
        /**
         * Quantity
         * @description An amount with its unit: "15 deg", "3:12", "40 psf", "115 mph".
         */
        QuantityInput: string;
        QuantityInputView: {
            /** @description How to give it: `given: [{ from, value }]`. */
            from: string;
            kind: components["schemas"]["InputKind"];
            title: string;
            unit: string | null;
            choices: string[];
            perEnd: boolean;
            /** @description The figure of the catalog, where there is one. */
            usual: string | null;
        };
        QuantityPage: {
            items: components["schemas"]["QuantitySummary"][];
            /** @description Null on the last page. */
            nextCursor: string | null;
        };
        QuantityRow: {
            cells: components["schemas"]["QuantityCell"][];
        };
        /**
         * @description An evaluation leaves out what does not apply.
         * @enum {string}
         */
        QuantityStatus: "computed" | "notDetermined" | "notApplicable";
        QuantitySummary: {
            quantity: string;
            title: string;
            part: components["schemas"]["Part"];
            /** @description UCUM code of the unit in which it is answered; null for a text. */
            unit: string | null;
            /** @description What a text may be, where only some are possible. */
            choices: string[];
            formula: string;
            /** @description Only orders or compares; not a figure to build by. */
            indicative: boolean;
            needsLicensedProfessional: boolean;
            /** @description False where it is long to compute or to read, and has to be asked for by itself. */
            inEvaluations: boolean;
        };
        /** @description Positions, pieces or a comparison beside the value. */
        QuantityTable: {
            title: string;
            columns: components["schemas"]["QuantityColumn"][];
            rows: components["schemas"]["QuantityRow"][];
        };
        /** @description Hourly depth in mm or in; `times` is what a written number is multiplied by, 0.1 for tenths. */
        RainColumnInput: {
            column: string;
            unit: string;
            times?: number | null;
        };
        RainSource: {
            title: string;
            locator: string;
            evidence: components["schemas"]["Evidence"];
            readIn: string | null;
        };
        /** @description Millimeters. */
        RainSums: {
            total: number;
            wetHours: number;
            /** @description Fell with wind from an unknown direction. */
            lost: number;
            calm: number;
            snow: number;
            ofUnknownTemperature: number;
            years: components["schemas"]["RainYear"][];
        };
        RainYear: {
            year: number;
            whole: boolean;
            rain: number;
        };
        ReadingView: {
            entry: string;
            value: string;
            method: components["schemas"]["ObservationMethod"];
            holdPoint: components["schemas"]["HoldPointId"];
            at: string;
            by: string;
        };
        /** @enum {string} */
        Reason: "missing" | "covered" | "conflictingEvidence" | "outsidePrescriptive" | "methodDoesNotHold" | "notAdopted" | "ruleUndecided";
        /**
         * @description By which reading of the record.
         * @enum {string}
         */
        RecordBasis: "asDesigned" | "asBuilt" | "asBuiltOverDesign";
        Releases: {
            current: components["schemas"]["CurrentRelease"];
            cut: string[];
        };
        Remedy: {
            beforeCoverUp: string;
            afterCoverUp: string;
        };
        /** @description How a miss is to be put right. */
        RemedyInput: {
            rule: string;
            /** @description Which end, seen from outside; both when left out. */
            member?: ("left" | "right") | null;
            /** @description What is to be done. */
            work: string;
            due?: string | null;
        };
        RepealToReview: {
            amendment: string;
            modification: string;
            rule: string;
            reason: string;
        };
        RepealedRule: {
            rule: string;
            title: string;
            reason: string;
            document: string | null;
            modification: string | null;
            instrument: components["schemas"]["Instrument"] | null;
            chain: components["schemas"]["ChainStep"][];
        };
        ReportRequest: {
            opening: components["schemas"]["OpeningInput"];
            /** @description Whose rules apply: "us-xa-101-2400000". Left out with an edition, the published texts alone are meant. */
            jurisdiction?: string | null;
            /** @description The permit application date, which selects what was in force. Today when left out. */
            asOf?: string | null;
            /** @description Takes this edition whatever is adopted: "irc-2021". */
            edition?: string | null;
            /** @description Which code is meant where several are adopted: "irc" for one- and two-family dwellings, "ibc" for other buildings. */
            publication?: string | null;
            /** @description Where the work stands. What an earlier operation hid then counts as covered. */
            holdPoint?: components["schemas"]["HoldPointId"] | null;
            /** @description Evaluates by a past release of the catalog as it was cut; by what is in force now when left out. */
            release?: string | null;
        };
        Reproduction: {
            evaluation: string;
            outcome: components["schemas"]["ReproductionOutcome"];
            keptDigest: string;
            /** @description Of the answer computed now. */
            digest: string;
            /** @description Digest of the catalog that answered then. */
            keptCatalog: string;
            /** @description Digest of the catalog that answered now; the same unless the one of that time is gone. */
            catalog: string;
            differences: components["schemas"]["AnswerDifference"][];
        };
        /** @enum {string} */
        ReproductionOutcome: "identical" | "different";
        Required: {
            /** @description The limit in a few words. */
            text: string;
            /** @description Which of the two figures is compared. */
            governing: components["schemas"]["UnitSystem"] | null;
            inchPound: string | null;
            si: string | null;
            /** @description Allowed or barred values, where the limit is not an amount. */
            values: string[];
        };
        /** @description The rule as it stands for one place and date. */
        ResolvedRule: {
            jurisdiction: string | null;
            resolvedAt: string | null;
            asOf: string;
            adoption: string | null;
            inForce: boolean;
            required: string | null;
            chain: components["schemas"]["ChainStep"][];
        };
        ReviewNeeded: {
            modification: string;
            rule: string;
            reason: string;
        };
        RevokedToken: {
            token: string;
            revokedAt: string;
        };
        RuleChange: {
            rule: string;
            title: string;
            change: components["schemas"]["RuleChangeKind"];
            /** @description False where only the source or the words are others. */
            requirementChanged: boolean;
            dates: string[];
            before: components["schemas"]["RuleState"] | null;
            after: components["schemas"]["RuleState"] | null;
        };
        /** @enum {string} */
        RuleChangeKind: "added" | "removed" | "changed";
        RuleDetail: {
            rule: string;
            revision: number;
            title: string;
            topic: string;
            part: components["schemas"]["Part"];
            holdPoint: components["schemas"]["HoldPointId"];
            status: components["schemas"]["RuleStatus"];
            force: components["schemas"]["Force"];
            statement: string;
            appliesWhen: string | null;
            fact: string | null;
            quantity: string | null;
            /** @description One entry for each edition. */
            history: components["schemas"]["RuleLimit"][];
            disagreements: components["schemas"]["Disagreement"][];
            remedy: components["schemas"]["Remedy"];
            cautions: string[];
            related: string[];
            examples: components["schemas"]["RuleExample"][];
            /** @description Answered when a jurisdiction or an edition is asked for. */
            resolved: components["schemas"]["ResolvedRule"] | null;
        };
        RuleExample: {
            name: string;
            outcome: components["schemas"]["Outcome"];
            margin: string | null;
        };
        /** @description What one edition requires. */
        RuleLimit: {
            publication: string;
            edition: string;
            locator: string;
            comparator: components["schemas"]["Comparator"];
            /** @description The limit in a few words. */
            text: string;
            governing: components["schemas"]["UnitSystem"] | null;
            inchPound: string | null;
            si: string | null;
            evidence: components["schemas"]["Evidence"];
            lastReviewed: string;
            readIn: string | null;
            note: string | null;
            /** @description What to know where the text prints two figures that contradict each other. */
            printedConflict: string | null;
        };
        RulePage: {
            items: components["schemas"]["RuleSummary"][];
            /** @description Null on the last page. */
            nextCursor: string | null;
        };
        RuleState: {
            required: string;
            appliesWhen: string | null;
            force: components["schemas"]["Force"];
            holdPoint: components["schemas"]["HoldPointId"];
            statement: string;
            by: components["schemas"]["ChainStep"] | null;
        };
        /** @enum {string} */
        RuleStatus: "draft" | "inForce" | "withdrawn";
        RuleSummary: {
            rule: string;
            revision: number;
            title: string;
            topic: string;
            part: components["schemas"]["Part"];
            holdPoint: components["schemas"]["HoldPointId"];
            status: components["schemas"]["RuleStatus"];
            force: components["schemas"]["Force"];
            statement: string;
        };
        /** @description A fact that is the same in every row. */
        SaidOnceInput: {
            fact: string;
            /** @description Which end, seen from outside; both when left out. */
            end?: ("left" | "right") | null;
            value: components["schemas"]["FactValue"];
        };
        ScheduleColumnInput: {
            /** @description The header as it stands in the sheet, or the number of the column, counted from 1. */
            column: string;
            /** @description The path of the fact that it tells: "opening.width". */
            fact: string;
            /** @description Which end, seen from outside; both when left out. */
            end?: ("left" | "right") | null;
            /** @description What the words of the sheet mean, where they are not those of the fact. Cells are compared without regard to case and spacing. */
            values?: components["schemas"]["CellValueInput"][] | null;
        };
        ScheduleImport: {
            import: string;
            outcome: components["schemas"]["ScheduleOutcome"];
            /** @description Rows below the headers that are not empty. */
            rows: number;
            /** @description Rows with a problem; of one whose cells do not fit the headers no opening is known. */
            wrongRows: number;
            openings: number;
            counts: components["schemas"]["ImportCounts"];
            problemCount: number;
            /** @description In the order of the rows; at most 5,000 are told. */
            problems: components["schemas"]["ImportProblem"][];
            /** @description Headers of columns from which nothing was read. */
            unreadColumns: string[];
            /** @description One for each opening, in the order of the rows. */
            results: components["schemas"]["ImportedOpening"][];
        };
        ScheduleImportRequest: {
            /**
             * Format: uuid
             * @description The id of this import, made by the client: the same import sent twice is one.
             */
            import: string;
            /** @description The sheet as CSV, at most 10,000 rows. */
            csv: string;
            /** @description Between two cells; found out when left out. */
            delimiter?: string | null;
            /** @description The row of the sheet that has the headers; 1 when left out. What stands above is not read. */
            headerRow?: number | null;
            /** @description The unit of every length that is written without one. */
            lengthUnit?: ("in" | "mm") | null;
            /** @description The mark of the opening, which becomes its reference. */
            markColumn: string;
            /** @description The id of the opening within the project. When left out it is made from the mark, with a hyphen for what an id cannot hold. */
            idColumn?: string | null;
            /** @description How many openings are so. Each becomes an opening by itself, with a number behind its mark and its id: W-1-1, W-1-2; also where it is one, so that ids stay when the quantity changes. */
            quantityColumn?: string | null;
            columns: components["schemas"]["ScheduleColumnInput"][];
            forEveryRow?: components["schemas"]["SaidOnceInput"][] | null;
            /**
             * Format: date-time
             * @description When it was collected or decided, by the clock of the device.
             */
            at: string;
            /** @description A role or an opaque id, never the name of a person: "inspector", "crew-7". */
            by: string;
            /** @description Checks and answers, and puts nothing on record. */
            validateOnly?: boolean | null;
            /** @description Takes the rows without a problem. Left out, one problem anywhere holds everything back. */
            takeGoodRows?: boolean | null;
            /** @description A row whose opening has another design on record replaces it. Left out, such a row is a problem. */
            revise?: boolean | null;
        };
        /**
         * @description All of it is on record; what was right is; nothing is, see the problems; nothing was to be put on record.
         * @enum {string}
         */
        ScheduleOutcome: "taken" | "takenInPart" | "nothingTaken" | "checked";
        ScheduledOpeningInput: {
            /** @description How many openings are so; 1 when left out. */
            count?: number | null;
            opening: components["schemas"]["OpeningInput"];
        };
        /**
         * @description How the newest signing secret or private key lies in the store. Encrypted needs WEBHOOK_KEY in the configuration.
         * @enum {string}
         */
        SecretKept: "encrypted" | "inTheClear";
        /** @enum {string} */
        SectionChosen: "described" | "lightest" | "notKnown";
        /**
         * Angle section
         * @description Legs and thickness: "L5x3-1/2x5/16", "2L6x3-1/2x5/16", "L127x89x7.9".
         */
        SectionInput: string;
        SeenBy: {
            entry: string;
            at: string;
            by: string;
        };
        /** @description What was known when it was signed off. */
        SignOffGround: {
            release: string;
            catalogDigest: string;
            /** @description Digest of the evaluation, as seen, at that time. */
            assessment: string;
            ready: boolean;
            /** @description Mandatory rules to be seen there that were not decided. */
            undecided: string[];
            /** @description Mandatory rules to be seen there that were not met and not waived. */
            notMet: string[];
            /** @description Mandatory rules to be seen there that were waived or modified. */
            waived: string[];
            outcomes: components["schemas"]["OutcomeAtSignOff"][];
        };
        SignOffInput: {
            holdPoint: components["schemas"]["HoldPointId"];
            /** @description Why it is signed off although something mandatory is open or not met. */
            reason?: string | null;
        };
        SignOffView: {
            entry: string;
            holdPoint: components["schemas"]["HoldPointId"];
            at: string;
            by: string;
            reason: string | null;
            /** @description Null when the opening could not be evaluated at that time. */
            ground: components["schemas"]["SignOffGround"] | null;
            /** @description Whether it would be ready by all that is known now; null while it cannot be evaluated. */
            ready: boolean | null;
        };
        /** Sill flashing */
        SillFlashingInput: {
            /**
             * Sill flashing present
             * @description A flashing under the sill units.
             */
            present?: boolean | null;
            /**
             * Sill flashing material
             * @description What carries the water, not the drip or the primer.
             */
            material?: ("stainlessSteel" | "copper" | "leadCoatedCopper" | "copperComposite" | "galvanizedSteel" | "selfAdheredMembrane" | "epdm" | "pvc" | "aluminum" | "lead" | "polyethylene" | "asphaltFelt" | "buildingWrap") | null;
            /**
             * Sill flashing past the jamb
             * @description From the edge of the opening to the end of the flashing.
             */
            extensionPastJamb?: (components["schemas"]["LengthInput"] | (components["schemas"]["LengthInput"] | null)[]) | null;
            /**
             * Sill flashing up the back
             * @description How far it turns up behind the sill units.
             */
            upstand?: components["schemas"]["LengthInput"] | null;
            /**
             * Sill flashing past the face
             * @description Negative when it stops inside the brick.
             */
            projection?: components["schemas"]["LengthInput"] | null;
            /**
             * Stock length of the sill flashing
             * @description Length in which the flashing is delivered.
             */
            stockLength?: components["schemas"]["LengthInput"] | null;
            /**
             * End dam at the sill
             * @description The end of the flashing is turned up.
             */
            endDamPresent?: (boolean | (boolean | null)[]) | null;
            /**
             * End dam height at the sill
             * @description 0 when there is no dam.
             */
            endDamHeight?: (components["schemas"]["LengthInput"] | (components["schemas"]["LengthInput"] | null)[]) | null;
            /**
             * Sill flashing reaches the face
             * @description False when it stops inside the brick.
             */
            reachesFace?: boolean | null;
        };
        /** Sill */
        SillInput: {
            /**
             * Kind of sill
             * @description What sheds the water at the foot of the opening.
             */
            kind?: ("brickRowlock" | "brickHeader" | "precastConcrete" | "stone" | "metal" | "doorThreshold" | "none") | null;
            /**
             * Slope of the sill
             * @description Fall toward the outside: "15 deg" or "3:12"; negative when it falls back.
             */
            slope?: components["schemas"]["QuantityInput"] | null;
            /**
             * Depth of the sill
             * @description Horizontal distance over which the sill falls, front to back.
             */
            depth?: components["schemas"]["LengthInput"] | null;
            /**
             * Sill past the face
             * @description From the brick face below out to the front of the sill.
             */
            projection?: components["schemas"]["LengthInput"] | null;
            /**
             * Drip under the sill
             * @description A groove, or the front corner when the slope makes one.
             */
            dripPresent?: boolean | null;
            /**
             * Gap under the frame
             * @description Room for movement between the sill and the frame.
             */
            gapUnderFrame?: components["schemas"]["LengthInput"] | null;
            /**
             * Sill pan in the rough opening
             * @description A watertight tray under the window or door, open to the outside.
             */
            panPresent?: boolean | null;
            /**
             * Sill pan drains
             * @description Sloped or sealed so that water runs out to the face or onto the barrier.
             */
            panDrains?: boolean | null;
            /**
             * Back dam of the pan
             * @description Height of the inner edge of the pan.
             */
            panBackDamHeight?: components["schemas"]["LengthInput"] | null;
            flashing?: components["schemas"]["SillFlashingInput"] | null;
            weeps?: components["schemas"]["SillWeepsInput"] | null;
        };
        /** Weeps at the sill */
        SillWeepsInput: {
            /**
             * Kind of weep at the sill
             * @description A rope that is pulled out leaves a tube; a rope left in place is a wick.
             */
            kind?: ("openHeadJoint" | "cellVent" | "mesh" | "tube" | "wick" | "rope" | "none") | null;
            /**
             * Weep spacing at the sill
             * @description Greatest distance between two weeps, center to center.
             */
            spacing?: components["schemas"]["LengthInput"] | null;
            /**
             * Weep size at the sill
             * @description Least clear diameter or joint width.
             */
            diameter?: components["schemas"]["LengthInput"] | null;
            /**
             * Height of an open weep at the sill
             * @description Of an open head joint or vent; the whole course when left out.
             */
            openHeight?: components["schemas"]["LengthInput"] | null;
            /**
             * Number of weeps at the sill
             * @description Counted over this opening.
             */
            count?: number | null;
            /**
             * Weeps on the flashing at the sill
             * @description True when the weep sits directly on the flashing, not a course above.
             */
            onFlashing?: boolean | null;
            /**
             * Weeps open at the sill
             * @description False when mortar, paint or sealant closes any of them.
             */
            open?: boolean | null;
            /**
             * End weep to end dam at the sill
             * @description From the last weep to the end of the flashing.
             */
            endWeepToDam?: (components["schemas"]["LengthInput"] | (components["schemas"]["LengthInput"] | null)[]) | null;
        };
        Source: {
            title: string;
            locator: string;
            evidence: components["schemas"]["Evidence"];
            readIn: string | null;
        };
        /** @description Only the lines of this station. */
        StationInput: {
            column: string;
            is: string;
        };
        Subject: {
            reference: string | null;
            basis: ("asDesigned" | "asBuilt") | null;
            /** @description The system in which the opening was described; values lead with it. */
            unitSystem: components["schemas"]["UnitSystem"];
            digest: string;
            facts: components["schemas"]["SubjectFact"][];
        };
        SubjectFact: {
            fact: string;
            member: components["schemas"]["Member"] | null;
            given: string;
            settled: string;
            derivedFrom: string[];
            conflictsWith: string[];
        };
        /** Submittals */
        SubmittedInput: {
            /**
             * Flashing drawing submitted
             * @description A drawing of the flashing of this opening, with laps, end dams and drip, is with whoever has to see it.
             */
            flashingDrawing?: boolean | null;
            /**
             * Lintel schedule submitted
             * @description A list of the lintels with section, length and bearing is with whoever has to see it.
             */
            lintelSchedule?: boolean | null;
            /**
             * Tie data submitted
             * @description Product data of the ties and their fasteners are with whoever has to see them.
             */
            tieData?: boolean | null;
            /**
             * Mock-up accepted
             * @description A sample of the wall with an opening was built, seen and accepted.
             */
            mockUp?: boolean | null;
        };
        Summary: {
            pass: number;
            fail: number;
            notDetermined: number;
            notApplicable: number;
            mandatoryFailures: number;
            mandatoryNotDetermined: number;
            /** @description Decided findings whose limit is not confirmed in a text. */
            fromMemory: number;
            verdict: components["schemas"]["Verdict"];
        };
        TakeOff: {
            jurisdiction: string | null;
            asOf: string;
            editions: string[];
            openings: number;
            lintels: components["schemas"]["LintelPiece"][];
            flashing: components["schemas"]["FlashingPiece"][];
            cutLists: components["schemas"]["FlashingCutList"][];
            totals: components["schemas"]["TakeOffTotal"][];
            /** @description What could not be computed; the totals are short of it. */
            gaps: components["schemas"]["TakeOffGap"][];
            notice: string;
        };
        TakeOffGap: {
            reference: string;
            count: number;
            quantity: string;
            title: string;
            missing: string[];
            why: string | null;
        };
        TakeOffRequest: {
            /** @description Whose rules apply: "us-xa-101-2400000". Left out with an edition, the published texts alone are meant. */
            jurisdiction?: string | null;
            /** @description The permit application date, which selects what was in force. Today when left out. */
            asOf?: string | null;
            /** @description Takes this edition whatever is adopted: "irc-2021". */
            edition?: string | null;
            /** @description Which code is meant where several are adopted: "irc" for one- and two-family dwellings, "ibc" for other buildings. */
            publication?: string | null;
            openings: components["schemas"]["ScheduledOpeningInput"][];
        };
        TakeOffTotal: {
            quantity: string;
            title: string;
            unit: string | null;
            amount: number;
            inchPound: string;
            si: string;
            /** @description Openings in the sum. */
            counted: string[];
            notApplicable: string[];
            /** @description Openings that are missing in the sum. */
            notKnown: string[];
        };
        TemperatureColumnInput: {
            column: string;
            unit: string;
        };
        /** Ties */
        TiesInput: {
            /**
             * Kind of tie
             * @description How the brick is anchored to the backing.
             */
            kind?: ("corrugated" | "sheetMetal" | "wire" | "adjustableTwoPiece" | "jointReinforcement" | "drip") | null;
            /**
             * Tie wire diameter
             * @description Of the part that lies in the bed joint.
             */
            wireDiameter?: components["schemas"]["LengthInput"] | null;
            /**
             * Tie sheet thickness
             * @description Of corrugated or sheet-metal ties.
             */
            sheetThickness?: components["schemas"]["LengthInput"] | null;
            /**
             * Tie sheet width
             * @description Of corrugated or sheet-metal ties.
             */
            sheetWidth?: components["schemas"]["LengthInput"] | null;
            /**
             * Tie spacing, horizontal
             * @description Greatest distance between ties along a course.
             */
            horizontalSpacing?: components["schemas"]["LengthInput"] | null;
            /**
             * Tie spacing, vertical
             * @description Greatest distance between courses with ties.
             */
            verticalSpacing?: components["schemas"]["LengthInput"] | null;
            /**
             * Wall area per tie
             * @description Greatest area that one tie serves; worked out from the spacings when left out.
             */
            areaPerTie?: components["schemas"]["QuantityInput"] | null;
            /**
             * Ties from the opening
             * @description Greatest distance from the edge of the opening to the ties beside it.
             */
            distanceFromOpening?: components["schemas"]["LengthInput"] | null;
            /**
             * Tie spacing around the opening
             * @description Greatest distance between the ties that go round the opening.
             */
            perimeterSpacing?: components["schemas"]["LengthInput"] | null;
            /**
             * Allowable load of one tie
             * @description In and out of the wall, as its maker states it or as tested, with the safety factor taken off.
             */
            capacity?: components["schemas"]["QuantityInput"] | null;
            /**
             * Tie embedment
             * @description Length of tie in the bed joint.
             */
            embedment?: components["schemas"]["LengthInput"] | null;
            /**
             * Mortar cover at the face
             * @description From the end of the tie to the outside face.
             */
            faceCover?: components["schemas"]["LengthInput"] | null;
            /**
             * Fastener from the bend
             * @description Of corrugated and sheet-metal ties.
             */
            fastenerFromBend?: components["schemas"]["LengthInput"] | null;
            /**
             * Tie fastener
             * @description What holds the tie to the backing.
             */
            fastener?: ("ringShankNail" | "commonNail" | "screw" | "roofingNail" | "other") | null;
            /**
             * Offset of two-piece ties
             * @description Vertical distance between the two parts.
             */
            misalignment?: components["schemas"]["LengthInput"] | null;
            /**
             * Ties slope down to the backing
             * @description True leads water across the air space.
             */
            slopesToBacking?: boolean | null;
            /**
             * Corrosion protection of ties
             * @description As delivered.
             */
            protection?: ("none" | "millGalvanized" | "hotDipGalvanized" | "stainlessSteel") | null;
        };
        /** @description One column of times, "2013-06-10T14:00", or a column for each of year, month, day and hour. The hour is the one that begins then. */
        TimeColumnsInput: {
            column?: string | null;
            year?: string | null;
            month?: string | null;
            day?: string | null;
            hour?: string | null;
        };
        Token: {
            id: string;
            title: string;
            evaluate: boolean;
            /** @description In all projects. */
            record: boolean;
            projects: string[];
            amend: string[];
            administer: boolean;
            createdAt: string;
            expiresAt: string | null;
            revokedAt: string | null;
        };
        TokenList: {
            items: components["schemas"]["Token"][];
        };
        TokenRequest: {
            title: string;
            /** @description May read the catalog and evaluate, and nothing else. Every other scope takes this in. */
            evaluate?: boolean | null;
            /** @description May open projects, record in all of them and keep evaluations. */
            record?: boolean | null;
            /** @description May record in these projects alone, and sees no other. */
            projects?: string[] | null;
            /** @description May draft and adopt amendments of these jurisdictions and all within them. */
            amend?: string[] | null;
            /** @description May make and revoke tokens. */
            administer?: boolean | null;
            expiresAt?: string | null;
        };
        /** @enum {string} */
        UnitSystem: "inchPound" | "si";
        UsedInput: {
            name: string;
            from: string;
            text: string;
        };
        /** Veneer */
        VeneerInput: {
            /**
             * Kind of veneer
             * @description Anchored veneer is tied to a backing across an air space. Solid masonry is not veneer.
             */
            kind?: ("anchoredBrick" | "anchoredStone" | "adheredMasonry" | "solidMasonry") | null;
            /**
             * Brick
             * @description The standard name of the brick; it sets the coursing.
             */
            unit?: ("modular" | "standard" | "engineerModular" | "engineerStandard" | "closureModular" | "closureStandard" | "roman" | "norman" | "engineerNorman" | "utility" | "king" | "queen" | "britishStandard" | "germanNormal" | "germanThin" | "australianStandard") | null;
            /**
             * Brick height
             * @description Height of one brick as laid, without its joint. Goes before the size of the standard name.
             */
            unitHeight?: components["schemas"]["LengthInput"] | null;
            /**
             * Brick length
             * @description Length of one brick along the face, without its joint. Goes before the size of the standard name.
             */
            unitLength?: components["schemas"]["LengthInput"] | null;
            /**
             * Mortar joint
             * @description Thickness of bed and head joints.
             */
            jointThickness?: components["schemas"]["LengthInput"] | null;
            /**
             * Strength of the masonry
             * @description Specified compressive strength of the masonry, f'm.
             */
            compressiveStrength?: components["schemas"]["QuantityInput"] | null;
            /**
             * Brick thickness
             * @description Actual thickness of the wythe, not nominal.
             */
            thickness?: components["schemas"]["LengthInput"] | null;
            /**
             * Bond
             * @description Only overlapping bonds can arch over an opening.
             */
            bond?: ("running" | "thirdRunning" | "flemish" | "english" | "stack") | null;
            /**
             * Veneer weight
             * @description Installed weight of the wythe.
             */
            weight?: components["schemas"]["QuantityInput"] | null;
            /**
             * Course over the head
             * @description How the first course on the support is laid.
             */
            headCourse?: ("stretcher" | "rowlock" | "soldier" | "stone" | "archRing") | null;
        };
        /** @enum {string} */
        Verdict: "pass" | "attention" | "incomplete" | "fail";
        /** @description Openings by their verdict. */
        VerdictCounts: {
            pass: number;
            attention: number;
            incomplete: number;
            fail: number;
            notEvaluated: number;
        };
        VerdictTransition: {
            from: components["schemas"]["Verdict"];
            to: components["schemas"]["Verdict"];
            count: number;
        };
        /** @description Somebody looked at how a miss was put right. */
        VerificationInput: {
            rule: string;
            /** @description Which end, seen from outside; both when left out. */
            member?: ("left" | "right") | null;
            result: components["schemas"]["VerificationResult"];
            holdPoint: components["schemas"]["HoldPointId"];
        };
        /** @enum {string} */
        VerificationResult: "mended" | "notMended";
        VerificationView: {
            entry: string;
            at: string;
            by: string;
            /** @enum {string} */
            result: "mended" | "notMended";
            holdPoint: components["schemas"]["HoldPointId"];
            note: string | null;
        };
        /** @description What the building official granted for one rule at one opening. */
        WaiverInput: {
            rule: string;
            kind: components["schemas"]["WaiverKind"];
            instrument: components["schemas"]["InstrumentInput"];
            /** @description The office that granted it. */
            grantedBy: string;
            expires?: string | null;
            conditions?: string | null;
        };
        /**
         * @description Freed from the rule, or allowed to meet it in another way.
         * @enum {string}
         */
        WaiverKind: "waiver" | "modification";
        /** @description What to look at on one walk: the openings with most last chances first, and of each opening the last chances, then what mandatory rules wait for. */
        Walk: {
            holdPoint: components["schemas"]["HoldPointId"];
            title: string;
            /** @description Facts, over all openings, that the next operation hides. */
            lastChances: number;
            openings: components["schemas"]["WalkOpening"][];
        };
        WalkOpening: {
            opening: string;
            reference: string | null;
            lastChances: number;
            facts: components["schemas"]["FactToCollect"][];
        };
        /** @description L/m2, in the free wind: by the hourly relation of the standard and by the linear one. */
        WallIndices: {
            years: components["schemas"]["WallYear"][];
            meanHourly: number | null;
            meanLinear: number | null;
            /** @description The greatest spell that two years in three do not exceed; null with too few whole years. */
            spellIndex: number | null;
        };
        /** Wall */
        WallInput: {
            veneer?: components["schemas"]["VeneerInput"] | null;
            /**
             * Clear air space
             * @description Least clear distance between the back of the brick and the sheathing or insulation.
             */
            airSpace?: components["schemas"]["LengthInput"] | null;
            /**
             * Backing
             * @description What the ties are fixed to.
             */
            backing?: ("woodStud" | "steelStud" | "concreteMasonry" | "concrete") | null;
            /**
             * Stud spacing
             * @description Center to center.
             */
            studSpacing?: components["schemas"]["LengthInput"] | null;
            /**
             * Sheathing
             * @description Ties and barrier are fixed through it.
             */
            sheathing?: ("orientedStrandBoard" | "plywood" | "gypsum" | "fiberboard" | "foamPlastic" | "none") | null;
            /**
             * Insulation outside the sheathing
             * @description 0 when there is none.
             */
            insulationThickness?: components["schemas"]["LengthInput"] | null;
            /**
             * Brick above the head
             * @description From the head support up to the top of the brick or the next support.
             */
            heightAboveHead?: components["schemas"]["LengthInput"] | null;
            /**
             * Stories of brick above
             * @description Whole stories of veneer that stand on this support.
             */
            storiesAbove?: number | null;
            /**
             * Movement joint at the jamb
             * @description A vertical joint that runs up at the edge of the opening; it stops arching.
             */
            movementJointAtJamb?: (boolean | (boolean | null)[]) | null;
            /**
             * Height of the veneer
             * @description From its noncombustible support to the top of the veneer, gable left out.
             */
            veneerHeight?: components["schemas"]["LengthInput"] | null;
            /**
             * Length of the wall
             * @description Along the face, from corner to corner or from joint to joint.
             */
            length?: components["schemas"]["LengthInput"] | null;
            /**
             * Movement joint spacing
             * @description Distance between two vertical movement joints in this wall.
             */
            movementJointSpacing?: components["schemas"]["LengthInput"] | null;
            /**
             * Movement joint width
             * @description Width of the vertical movement joint as built or drawn.
             */
            movementJointWidth?: components["schemas"]["LengthInput"] | null;
            /**
             * Height of veneer on one support
             * @description From one shelf angle or ledge up to the next.
             */
            storyHeight?: components["schemas"]["LengthInput"] | null;
            /**
             * Floor or roof load on the wall
             * @description Evenly along the wall, at its level above the lintel.
             */
            imposedLoad?: components["schemas"]["QuantityInput"] | null;
            /**
             * Floor or roof load above the lintel
             * @description From the lintel up to the level at which the load comes on.
             */
            imposedLoadHeight?: components["schemas"]["LengthInput"] | null;
            /**
             * Point load on the wall
             * @description A beam or post that rests on the brick above.
             */
            pointLoad?: components["schemas"]["QuantityInput"] | null;
            /**
             * Point load above the lintel
             * @description From the lintel up to the bearing of the beam or post.
             */
            pointLoadHeight?: components["schemas"]["LengthInput"] | null;
            /**
             * Point load from the left jamb
             * @description From the left jamb to the middle of the load, seen from outside; negative when it stands left of the opening.
             */
            pointLoadFromJamb?: components["schemas"]["LengthInput"] | null;
            /**
             * Plate under the point load
             * @description Length of the bearing plate along the wall; 0 for a knife edge.
             */
            pointLoadPlate?: components["schemas"]["LengthInput"] | null;
            /**
             * Floor, roof or point load on the brick above
             * @description True when anything but the brick itself rests on it.
             */
            loadAbove?: boolean | null;
            /**
             * State of the air space
             * @description Mortar droppings at the bottom, mortar bridges, or a space filled with grout or mortar.
             */
            cavityCondition?: ("clean" | "droppings" | "bridged" | "filled") | null;
        };
        WallRain: {
            azimuth: number;
            all: components["schemas"]["WallIndices"];
            withoutSnow: components["schemas"]["WallIndices"] | null;
        };
        WallYear: {
            year: number;
            whole: boolean;
            hourly: number;
            linear: number;
            greatestSpell: number;
        };
        Webhook: {
            webhook: string;
            target: string;
            description: string | null;
            eventTypes: components["schemas"]["EventType"][];
            projects: string[] | null;
            state: components["schemas"]["WebhookState"];
            disabledAt: string | null;
            disabledBecause: components["schemas"]["DisabledBecause"] | null;
            lastDeliveredAt: string | null;
            signature: components["schemas"]["WebhookSignature"];
            /** @description What signatures by Ed25519 are checked by: "whpk_" and the Base64 of 32 bytes. Null for HMAC. */
            publicKey: string | null;
            secretKept: components["schemas"]["SecretKept"];
            /** @description After a change of the secret or key. */
            oldSecretSignsUntil: string | null;
            createdAt: string;
        };
        WebhookPage: {
            items: components["schemas"]["Webhook"][];
            /** @description Null on the last page. */
            nextCursor: string | null;
        };
        WebhookRequest: {
            /** @description An https address on the public network that answers 2xx within 15 seconds. Redirections are not followed. */
            target: string;
            /** @description All when left out. */
            eventTypes?: components["schemas"]["EventType"][] | null;
            /** @description Events of these projects only. Adopted amendments and kept evaluations belong to no project and are not narrowed by it. */
            projects?: string[] | null;
            description?: string | null;
            /** @description hmac when left out. It stays as long as the webhook. */
            signature?: components["schemas"]["WebhookSignature"] | null;
        };
        /**
         * @description How deliveries are signed: by HMAC-SHA256 with a secret that the receiver knows too (`v1` of Standard Webhooks), or by Ed25519 with a key that only the service has (`v1a`); anybody can check that with the public key, and nobody else can sign.
         * @enum {string}
         */
        WebhookSignature: "hmac" | "ed25519";
        /** @enum {string} */
        WebhookState: "active" | "disabled";
        WebhookWithSecret: {
            webhook: components["schemas"]["Webhook"];
            /** @description The signing secret, "whsec_" and Base64. Shown this once. Null for Ed25519, whose private key is never shown. */
            secret: string | null;
        };
        WeightView: {
            inchPound: string;
            si: string;
            newtons: number;
        };
        WindColumnInput: {
            column: string;
            unit: string;
        };
    };
    responses: {
        /** @description The caller has it already: it sent this ETag in If-None-Match. */
        NotModified: {
            headers: {
                ETag: components["headers"]["ETag"];
                [name: string]: unknown;
            };
            content?: never;
        };
        /** @description A token was sent that is unknown, expired or revoked, or one is needed. */
        Unauthenticated: {
            headers: {
                "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                RateLimit: components["headers"]["RateLimit"];
                [name: string]: unknown;
            };
            content: {
                "application/problem+json": components["schemas"]["Problem"];
            };
        };
        /** @description More was asked for than the quota allows. */
        QuotaExceeded: {
            headers: {
                "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                RateLimit: components["headers"]["RateLimit"];
                "Retry-After": components["headers"]["RetryAfter"];
                [name: string]: unknown;
            };
            content: {
                "application/problem+json": components["schemas"]["Problem"];
            };
        };
        /** @description The service failed. Nothing was decided. */
        Failed: {
            headers: {
                [name: string]: unknown;
            };
            content: {
                "application/problem+json": components["schemas"]["Problem"];
            };
        };
    };
    parameters: never;
    requestBodies: never;
    headers: {
        /**
         * @description Strong: changes with every byte of the answer. Of what can be changed, the part before the semicolon is the version that If-Match has to name.
         * @example "Qm9keSBvZiB0aGUgYW5zd2Vy"
         */
        ETag: string;
        /**
         * @description Who may keep the answer, and whether it has to be asked for again.
         * @example public, no-cache
         */
        CacheControl: string;
        /**
         * @description The quota: so many units (q) in so many seconds (w). Not there when nobody counts.
         * @example "default";q=3000;w=60
         */
        RateLimitPolicy: string;
        /**
         * @description What is left of it: units (r) and seconds until there are all again (t).
         * @example "default";r=2995;t=41
         */
        RateLimit: string;
        /**
         * @description Seconds to wait.
         * @example 41
         */
        RetryAfter: number;
        /**
         * @description The next page (rel="next"), and what to read about a deprecation (rel="deprecation").
         * @example <https://wythe.example/v1/rules?after=b2ZmaWNl>; rel="next"
         */
        Link: string;
    };
    pathItems: never;
}
export type $defs = Record<string, never>;
export interface operations {
    live: {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description It runs. */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["HealthStatus"];
                };
            };
            /** @description The store does not answer. */
            500: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description The request was wrong. */
            "4XX": {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    ready: {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description They can. */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["HealthStatus"];
                };
            };
            /** @description The store does not answer. */
            500: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description The service is stopping, or too busy to say more than that. */
            503: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["HealthStatus"];
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description The request was wrong. */
            "4XX": {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    evaluateOpening: {
        parameters: {
            query?: never;
            header?: {
                /** @description A quoted text of the caller's own, "8e03978e-40d5-43dd-bc93-6894a57f9324" with its quotes. For 24 hours the same request with the same key is answered as the first time and made once. */
                "idempotency-key"?: string;
            };
            path?: never;
            cookie?: never;
        };
        requestBody: {
            content: {
                /**
                 * @example {
                 *       "jurisdiction": "us-xa-101-2400000",
                 *       "asOf": "2026-03-01",
                 *       "opening": {
                 *         "reference": "W-104",
                 *         "basis": "asBuilt",
                 *         "lengthUnit": "in",
                 *         "opening": {
                 *           "kind": "window",
                 *           "width": "48",
                 *           "height": "60",
                 *           "headShape": "flat"
                 *         },
                 *         "head": {
                 *           "support": {
                 *             "kind": "looseSteelAngle",
                 *             "section": "L5x3-1/2x5/16",
                 *             "bearing": [
                 *               "4",
                 *               "3 1/2"
                 *             ]
                 *           },
                 *           "flashing": {
                 *             "present": true,
                 *             "extensionPastJamb": [
                 *               "8",
                 *               "8"
                 *             ],
                 *             "endDamHeight": [
                 *               "2",
                 *               "0"
                 *             ],
                 *             "upstand": "8"
                 *           },
                 *           "weeps": {
                 *             "kind": "openHeadJoint",
                 *             "spacing": "24",
                 *             "onFlashing": true
                 *           }
                 *         }
                 *       }
                 *     }
                 */
                "application/json": components["schemas"]["EvaluationRequest"];
            };
        };
        responses: {
            /** @description What was asked for. */
            200: {
                headers: {
                    ETag: components["headers"]["ETag"];
                    "Cache-Control": components["headers"]["CacheControl"];
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Evaluation"];
                };
            };
            401: components["responses"]["Unauthenticated"];
            429: components["responses"]["QuotaExceeded"];
            500: components["responses"]["Failed"];
            /** @description What is wrong, where, and how to mend it. */
            "4XX": {
                headers: {
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description The service failed, or is too busy. Nothing was decided. */
            "5XX": {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    readEvaluation: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                /** @description The id of a kept evaluation. */
                evaluation: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description What was asked for. */
            200: {
                headers: {
                    ETag: components["headers"]["ETag"];
                    "Cache-Control": components["headers"]["CacheControl"];
                    Link: components["headers"]["Link"];
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Evaluation"];
                };
            };
            304: components["responses"]["NotModified"];
            401: components["responses"]["Unauthenticated"];
            429: components["responses"]["QuotaExceeded"];
            500: components["responses"]["Failed"];
            /** @description What is wrong, where, and how to mend it. */
            "4XX": {
                headers: {
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description The service failed, or is too busy. Nothing was decided. */
            "5XX": {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    reproduceEvaluation: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                /** @description The id of a kept evaluation. */
                evaluation: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description What was asked for. */
            200: {
                headers: {
                    ETag: components["headers"]["ETag"];
                    "Cache-Control": components["headers"]["CacheControl"];
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Reproduction"];
                };
            };
            401: components["responses"]["Unauthenticated"];
            429: components["responses"]["QuotaExceeded"];
            500: components["responses"]["Failed"];
            /** @description What is wrong, where, and how to mend it. */
            "4XX": {
                headers: {
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description The service failed, or is too busy. Nothing was decided. */
            "5XX": {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    evaluateBatch: {
        parameters: {
            query?: {
                /** @description Whose rules apply: "us-xa-101-2400000". Left out with an edition, the published texts alone are meant. */
                jurisdiction?: string;
                /** @description The permit application date, which selects what was in force. Today when left out. */
                asOf?: string;
                /** @description Takes this edition whatever is adopted: "irc-2021". */
                edition?: string;
                /** @description Which code is meant where several are adopted: "irc" for one- and two-family dwellings, "ibc" for other buildings. */
                publication?: string;
                /** @description Evaluates by a past release of the catalog as it was cut; by what is in force now when left out. */
                release?: string;
                /** @description Where the work stands, for openings that do not say it themselves. */
                holdPoint?: components["schemas"]["HoldPointId"];
                /** @description brief: the verdict, what is not met, what is not determined and what to measure next. full: whole evaluations beside, with quantities and digest. Brief when left out. */
                detail?: components["schemas"]["BatchDetail"];
            };
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody: {
            content: {
                /**
                 * @example {
                 *       "jurisdiction": "us-xa-101-2400000",
                 *       "asOf": "2026-03-01",
                 *       "openings": [
                 *         {
                 *           "key": "1",
                 *           "opening": {
                 *             "reference": "W-104",
                 *             "basis": "asBuilt",
                 *             "lengthUnit": "in",
                 *             "opening": {
                 *               "kind": "window",
                 *               "width": "48",
                 *               "height": "60",
                 *               "headShape": "flat"
                 *             },
                 *             "head": {
                 *               "support": {
                 *                 "kind": "looseSteelAngle",
                 *                 "section": "L5x3-1/2x5/16",
                 *                 "bearing": [
                 *                   "4",
                 *                   "3 1/2"
                 *                 ]
                 *               },
                 *               "flashing": {
                 *                 "present": true,
                 *                 "extensionPastJamb": [
                 *                   "8",
                 *                   "8"
                 *                 ],
                 *                 "endDamHeight": [
                 *                   "2",
                 *                   "0"
                 *                 ],
                 *                 "upstand": "8"
                 *               },
                 *               "weeps": {
                 *                 "kind": "openHeadJoint",
                 *                 "spacing": "24",
                 *                 "onFlashing": true
                 *               }
                 *             }
                 *           }
                 *         },
                 *         {
                 *           "key": "2",
                 *           "opening": {
                 *             "reference": "W-105",
                 *             "lengthUnit": "mm",
                 *             "opening": {
                 *               "kind": "window",
                 *               "width": "1200",
                 *               "height": "1500"
                 *             }
                 *           }
                 *         }
                 *       ]
                 *     }
                 */
                "application/json": components["schemas"]["BatchRequest"];
                "application/x-ndjson": string;
                "application/jsonl": string;
            };
        };
        responses: {
            /** @description What was asked for; of lines, one line of JSON for each. */
            200: {
                headers: {
                    ETag: components["headers"]["ETag"];
                    "Cache-Control": components["headers"]["CacheControl"];
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["BatchEvaluation"];
                    "application/x-ndjson": components["schemas"]["BatchAnswer"];
                };
            };
            401: components["responses"]["Unauthenticated"];
            429: components["responses"]["QuotaExceeded"];
            500: components["responses"]["Failed"];
            /** @description What is wrong, where, and how to mend it. */
            "4XX": {
                headers: {
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description The service failed, or is too busy. Nothing was decided. */
            "5XX": {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    drawOpening: {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody: {
            content: {
                /**
                 * @example {
                 *       "jurisdiction": "us-xa-101-2400000",
                 *       "asOf": "2026-03-01",
                 *       "opening": {
                 *         "reference": "W-104",
                 *         "basis": "asBuilt",
                 *         "lengthUnit": "in",
                 *         "opening": {
                 *           "kind": "window",
                 *           "width": "48",
                 *           "height": "60",
                 *           "headShape": "flat"
                 *         },
                 *         "head": {
                 *           "support": {
                 *             "kind": "looseSteelAngle",
                 *             "section": "L5x3-1/2x5/16",
                 *             "bearing": [
                 *               "4",
                 *               "3 1/2"
                 *             ]
                 *           },
                 *           "flashing": {
                 *             "present": true,
                 *             "extensionPastJamb": [
                 *               "8",
                 *               "8"
                 *             ],
                 *             "endDamHeight": [
                 *               "2",
                 *               "0"
                 *             ],
                 *             "upstand": "8"
                 *           },
                 *           "weeps": {
                 *             "kind": "openHeadJoint",
                 *             "spacing": "24",
                 *             "onFlashing": true
                 *           }
                 *         }
                 *       },
                 *       "kind": "elevation"
                 *     }
                 */
                "application/json": components["schemas"]["DrawingRequest"];
            };
        };
        responses: {
            /** @description What was asked for. */
            200: {
                headers: {
                    ETag: components["headers"]["ETag"];
                    "Cache-Control": components["headers"]["CacheControl"];
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content: {
                    "image/svg+xml": string;
                };
            };
            401: components["responses"]["Unauthenticated"];
            429: components["responses"]["QuotaExceeded"];
            500: components["responses"]["Failed"];
            /** @description What is wrong, where, and how to mend it. */
            "4XX": {
                headers: {
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description The service failed, or is too busy. Nothing was decided. */
            "5XX": {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    drawEvaluation: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                /** @description The id of a kept evaluation. */
                evaluation: string;
                /** @description Which drawing: the front, a section, the blanks of the flashings, or the layout of weeps and ties. */
                kind: "elevation" | "section" | "flashingPattern" | "weepsAndTies";
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description What was asked for. */
            200: {
                headers: {
                    ETag: components["headers"]["ETag"];
                    "Cache-Control": components["headers"]["CacheControl"];
                    Link: components["headers"]["Link"];
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content: {
                    "image/svg+xml": string;
                };
            };
            304: components["responses"]["NotModified"];
            401: components["responses"]["Unauthenticated"];
            429: components["responses"]["QuotaExceeded"];
            500: components["responses"]["Failed"];
            /** @description What is wrong, where, and how to mend it. */
            "4XX": {
                headers: {
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description The service failed, or is too busy. Nothing was decided. */
            "5XX": {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    listRules: {
        parameters: {
            query?: {
                /** @description Whose rules apply: "us-xa-101-2400000". Left out with an edition, the published texts alone are meant. */
                jurisdiction?: string;
                /** @description The permit application date, which selects what was in force. Today when left out. */
                asOf?: string;
                /** @description Takes this edition whatever is adopted: "irc-2021". */
                edition?: string;
                /** @description Which code is meant where several are adopted: "irc" for one- and two-family dwellings, "ibc" for other buildings. */
                publication?: string;
                /** @description Only rules of this part of the wall. */
                part?: components["schemas"]["Part"];
                /** @description Only rules of this topic: "flashing". */
                topic?: string;
                /** @description Only rules of this force. */
                force?: components["schemas"]["Force"];
                /** @description Only rules to be seen at this hold point. */
                holdPoint?: components["schemas"]["HoldPointId"];
                /** @description How many to answer at most; 50 when left out. */
                first?: number;
                /** @description Where to go on: the `nextCursor` of the page before; in a connection its `endCursor`, or the cursor of any edge. */
                after?: string;
            };
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description What was asked for. */
            200: {
                headers: {
                    ETag: components["headers"]["ETag"];
                    "Cache-Control": components["headers"]["CacheControl"];
                    Link: components["headers"]["Link"];
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["RulePage"];
                };
            };
            304: components["responses"]["NotModified"];
            401: components["responses"]["Unauthenticated"];
            429: components["responses"]["QuotaExceeded"];
            500: components["responses"]["Failed"];
            /** @description What is wrong, where, and how to mend it. */
            "4XX": {
                headers: {
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description The service failed, or is too busy. Nothing was decided. */
            "5XX": {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    readRule: {
        parameters: {
            query?: {
                /** @description Whose rules apply: "us-xa-101-2400000". Left out with an edition, the published texts alone are meant. */
                jurisdiction?: string;
                /** @description The permit application date, which selects what was in force. Today when left out. */
                asOf?: string;
                /** @description Takes this edition whatever is adopted: "irc-2021". */
                edition?: string;
                /** @description Which code is meant where several are adopted: "irc" for one- and two-family dwellings, "ibc" for other buildings. */
                publication?: string;
            };
            header?: never;
            path: {
                /**
                 * @description The id of the rule.
                 * @example lintel.bearing-length
                 */
                rule: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description What was asked for. */
            200: {
                headers: {
                    ETag: components["headers"]["ETag"];
                    "Cache-Control": components["headers"]["CacheControl"];
                    Link: components["headers"]["Link"];
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["RuleDetail"];
                };
            };
            304: components["responses"]["NotModified"];
            401: components["responses"]["Unauthenticated"];
            429: components["responses"]["QuotaExceeded"];
            500: components["responses"]["Failed"];
            /** @description What is wrong, where, and how to mend it. */
            "4XX": {
                headers: {
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description The service failed, or is too busy. Nothing was decided. */
            "5XX": {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    listJurisdictions: {
        parameters: {
            query?: {
                /** @description Only those directly within this one. */
                within?: string;
                /** @description How many to answer at most; 50 when left out. */
                first?: number;
                /** @description Where to go on: the `nextCursor` of the page before; in a connection its `endCursor`, or the cursor of any edge. */
                after?: string;
            };
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description What was asked for. */
            200: {
                headers: {
                    ETag: components["headers"]["ETag"];
                    "Cache-Control": components["headers"]["CacheControl"];
                    Link: components["headers"]["Link"];
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["JurisdictionPage"];
                };
            };
            304: components["responses"]["NotModified"];
            401: components["responses"]["Unauthenticated"];
            429: components["responses"]["QuotaExceeded"];
            500: components["responses"]["Failed"];
            /** @description What is wrong, where, and how to mend it. */
            "4XX": {
                headers: {
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description The service failed, or is too busy. Nothing was decided. */
            "5XX": {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    readJurisdiction: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                /**
                 * @description The id of the jurisdiction.
                 * @example us-xa-101
                 */
                jurisdiction: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description What was asked for. */
            200: {
                headers: {
                    ETag: components["headers"]["ETag"];
                    "Cache-Control": components["headers"]["CacheControl"];
                    Link: components["headers"]["Link"];
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Jurisdiction"];
                };
            };
            304: components["responses"]["NotModified"];
            401: components["responses"]["Unauthenticated"];
            429: components["responses"]["QuotaExceeded"];
            500: components["responses"]["Failed"];
            /** @description What is wrong, where, and how to mend it. */
            "4XX": {
                headers: {
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description The service failed, or is too busy. Nothing was decided. */
            "5XX": {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    listAmendments: {
        parameters: {
            query?: {
                /** @description Only amendments of this jurisdiction. */
                jurisdiction?: string;
                /** @description How many to answer at most; 50 when left out. */
                first?: number;
                /** @description Where to go on: the `nextCursor` of the page before; in a connection its `endCursor`, or the cursor of any edge. */
                after?: string;
            };
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description What was asked for. */
            200: {
                headers: {
                    ETag: components["headers"]["ETag"];
                    "Cache-Control": components["headers"]["CacheControl"];
                    Link: components["headers"]["Link"];
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["AmendmentPage"];
                };
            };
            304: components["responses"]["NotModified"];
            401: components["responses"]["Unauthenticated"];
            429: components["responses"]["QuotaExceeded"];
            500: components["responses"]["Failed"];
            /** @description What is wrong, where, and how to mend it. */
            "4XX": {
                headers: {
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description The service failed, or is too busy. Nothing was decided. */
            "5XX": {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    readAmendment: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                /** @description The part of the id before the slash. */
                jurisdiction: string;
                /** @description The part after it. */
                instrument: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description What was asked for. */
            200: {
                headers: {
                    ETag: components["headers"]["ETag"];
                    "Cache-Control": components["headers"]["CacheControl"];
                    Link: components["headers"]["Link"];
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Amendment"];
                };
            };
            304: components["responses"]["NotModified"];
            401: components["responses"]["Unauthenticated"];
            429: components["responses"]["QuotaExceeded"];
            500: components["responses"]["Failed"];
            /** @description What is wrong, where, and how to mend it. */
            "4XX": {
                headers: {
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description The service failed, or is too busy. Nothing was decided. */
            "5XX": {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    listAmendmentDrafts: {
        parameters: {
            query?: {
                /** @description Only drafts of this jurisdiction. */
                jurisdiction?: string;
                /** @description How many to answer at most; 50 when left out. */
                first?: number;
                /** @description Where to go on: the `nextCursor` of the page before; in a connection its `endCursor`, or the cursor of any edge. */
                after?: string;
            };
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description What was asked for. */
            200: {
                headers: {
                    ETag: components["headers"]["ETag"];
                    "Cache-Control": components["headers"]["CacheControl"];
                    Link: components["headers"]["Link"];
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["AmendmentDraftPage"];
                };
            };
            304: components["responses"]["NotModified"];
            401: components["responses"]["Unauthenticated"];
            429: components["responses"]["QuotaExceeded"];
            500: components["responses"]["Failed"];
            /** @description What is wrong, where, and how to mend it. */
            "4XX": {
                headers: {
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description The service failed, or is too busy. Nothing was decided. */
            "5XX": {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    createAmendmentDraft: {
        parameters: {
            query?: {
                /** @description Checks and answers as if it were kept, and keeps nothing. */
                validateOnly?: boolean | null;
            };
            header?: {
                /** @description A quoted text of the caller's own, "8e03978e-40d5-43dd-bc93-6894a57f9324" with its quotes. For 24 hours the same request with the same key is answered as the first time and made once. */
                "idempotency-key"?: string;
            };
            path?: never;
            cookie?: never;
        };
        requestBody: {
            content: {
                /**
                 * @example {
                 *       "amendment": "us-xa-101/ord-2026-40",
                 *       "jurisdiction": "us-xa-101",
                 *       "amends": {
                 *         "publication": "irc",
                 *         "editions": [
                 *           "2021"
                 *         ]
                 *       },
                 *       "instrument": {
                 *         "kind": "ordinance",
                 *         "number": "2026-40",
                 *         "section": "9-4",
                 *         "adopted": "2026-02-10",
                 *         "href": "https://law.example/us-xa-101/ord-2026-40"
                 *       },
                 *       "effectiveFrom": "2026-10-01",
                 *       "effectiveUntil": null,
                 *       "application": "permitApplicationDate",
                 *       "supersedes": [],
                 *       "modifications": [
                 *         {
                 *           "modification": "m1",
                 *           "kind": "substitution",
                 *           "target": {
                 *             "rule": "tie.embedment",
                 *             "part": "limit"
                 *           },
                 *           "old": {
                 *             "inchPound": "1 1/2 [in_i]"
                 *           },
                 *           "new": {
                 *             "governing": "inchPound",
                 *             "inchPound": "2 [in_i]",
                 *             "si": "51 mm",
                 *             "locator": "9-4(b)"
                 *           }
                 *         }
                 *       ],
                 *       "examples": [
                 *         {
                 *           "name": "the day before",
                 *           "rule": "tie.embedment",
                 *           "asOf": "2026-09-30",
                 *           "facts": {
                 *             "ties.embedment": "1 3/4 in"
                 *           },
                 *           "outcome": "pass",
                 *           "margin": "6.35 mm"
                 *         },
                 *         {
                 *           "name": "from the day on",
                 *           "rule": "tie.embedment",
                 *           "asOf": "2026-10-01",
                 *           "facts": {
                 *             "ties.embedment": "1 3/4 in"
                 *           },
                 *           "outcome": "fail",
                 *           "margin": "-6.35 mm"
                 *         }
                 *       ]
                 *     }
                 */
                "application/json": Record<string, never>;
                "application/yaml": string;
                "text/yaml": string;
            };
        };
        responses: {
            /** @description The same, checked only: nothing was made. */
            200: {
                headers: {
                    ETag: components["headers"]["ETag"];
                    "Cache-Control": components["headers"]["CacheControl"];
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["AmendmentDraft"];
                };
            };
            /** @description What was asked for. */
            201: {
                headers: {
                    ETag: components["headers"]["ETag"];
                    "Cache-Control": components["headers"]["CacheControl"];
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["AmendmentDraft"];
                };
            };
            401: components["responses"]["Unauthenticated"];
            429: components["responses"]["QuotaExceeded"];
            500: components["responses"]["Failed"];
            /** @description What is wrong, where, and how to mend it. */
            "4XX": {
                headers: {
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description The service failed, or is too busy. Nothing was decided. */
            "5XX": {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    readAmendmentDraft: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                /** @description The id of the draft. */
                draft: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description What was asked for. */
            200: {
                headers: {
                    ETag: components["headers"]["ETag"];
                    "Cache-Control": components["headers"]["CacheControl"];
                    Link: components["headers"]["Link"];
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["AmendmentDraft"];
                };
            };
            304: components["responses"]["NotModified"];
            401: components["responses"]["Unauthenticated"];
            429: components["responses"]["QuotaExceeded"];
            500: components["responses"]["Failed"];
            /** @description What is wrong, where, and how to mend it. */
            "4XX": {
                headers: {
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description The service failed, or is too busy. Nothing was decided. */
            "5XX": {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    changeAmendmentDraft: {
        parameters: {
            query?: never;
            header: {
                /** @description The ETag of what the change is based on. The part up to the semicolon decides: the version. */
                "if-match": string;
            };
            path: {
                /** @description The id of the draft. */
                draft: string;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                /**
                 * @example {
                 *       "amendment": "us-xa-101/ord-2026-40",
                 *       "jurisdiction": "us-xa-101",
                 *       "amends": {
                 *         "publication": "irc",
                 *         "editions": [
                 *           "2021"
                 *         ]
                 *       },
                 *       "instrument": {
                 *         "kind": "ordinance",
                 *         "number": "2026-40",
                 *         "section": "9-5",
                 *         "adopted": "2026-02-10",
                 *         "href": "https://law.example/us-xa-101/ord-2026-40"
                 *       },
                 *       "effectiveFrom": "2026-10-01",
                 *       "effectiveUntil": null,
                 *       "application": "permitApplicationDate",
                 *       "supersedes": [],
                 *       "modifications": [
                 *         {
                 *           "modification": "m1",
                 *           "kind": "substitution",
                 *           "target": {
                 *             "rule": "tie.embedment",
                 *             "part": "limit"
                 *           },
                 *           "old": {
                 *             "inchPound": "1 1/2 [in_i]"
                 *           },
                 *           "new": {
                 *             "governing": "inchPound",
                 *             "inchPound": "2 [in_i]",
                 *             "si": "51 mm",
                 *             "locator": "9-4(b)"
                 *           }
                 *         }
                 *       ],
                 *       "examples": [
                 *         {
                 *           "name": "the day before",
                 *           "rule": "tie.embedment",
                 *           "asOf": "2026-09-30",
                 *           "facts": {
                 *             "ties.embedment": "1 3/4 in"
                 *           },
                 *           "outcome": "pass",
                 *           "margin": "6.35 mm"
                 *         },
                 *         {
                 *           "name": "from the day on",
                 *           "rule": "tie.embedment",
                 *           "asOf": "2026-10-01",
                 *           "facts": {
                 *             "ties.embedment": "1 3/4 in"
                 *           },
                 *           "outcome": "fail",
                 *           "margin": "-6.35 mm"
                 *         }
                 *       ]
                 *     }
                 */
                "application/json": Record<string, never>;
                "application/yaml": string;
                "text/yaml": string;
            };
        };
        responses: {
            /** @description What was asked for. */
            200: {
                headers: {
                    ETag: components["headers"]["ETag"];
                    "Cache-Control": components["headers"]["CacheControl"];
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["AmendmentDraft"];
                };
            };
            401: components["responses"]["Unauthenticated"];
            429: components["responses"]["QuotaExceeded"];
            500: components["responses"]["Failed"];
            /** @description What is wrong, where, and how to mend it. */
            "4XX": {
                headers: {
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description The service failed, or is too busy. Nothing was decided. */
            "5XX": {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    deleteAmendmentDraft: {
        parameters: {
            query?: never;
            header: {
                /** @description The ETag of what the change is based on. The part up to the semicolon decides: the version. */
                "if-match": string;
            };
            path: {
                /** @description The id of the draft. */
                draft: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description What was asked for. */
            200: {
                headers: {
                    ETag: components["headers"]["ETag"];
                    "Cache-Control": components["headers"]["CacheControl"];
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["AmendmentDraft"];
                };
            };
            401: components["responses"]["Unauthenticated"];
            429: components["responses"]["QuotaExceeded"];
            500: components["responses"]["Failed"];
            /** @description What is wrong, where, and how to mend it. */
            "4XX": {
                headers: {
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description The service failed, or is too busy. Nothing was decided. */
            "5XX": {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    previewAmendmentDraft: {
        parameters: {
            query?: {
                /** @description How many kept evaluations to try at most; 1 000 when left out. */
                kept?: number;
                /** @description How many changed openings to show; 20 when left out. */
                examples?: number;
            };
            header?: never;
            path: {
                /** @description The id of the draft. */
                draft: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description What was asked for. */
            200: {
                headers: {
                    ETag: components["headers"]["ETag"];
                    "Cache-Control": components["headers"]["CacheControl"];
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["AmendmentPreview"];
                };
            };
            401: components["responses"]["Unauthenticated"];
            429: components["responses"]["QuotaExceeded"];
            500: components["responses"]["Failed"];
            /** @description What is wrong, where, and how to mend it. */
            "4XX": {
                headers: {
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description The service failed, or is too busy. Nothing was decided. */
            "5XX": {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    adoptAmendmentDraft: {
        parameters: {
            query?: never;
            header: {
                /** @description The ETag of what the change is based on. The part up to the semicolon decides: the version. */
                "if-match": string;
                /** @description A quoted text of the caller's own, "8e03978e-40d5-43dd-bc93-6894a57f9324" with its quotes. For 24 hours the same request with the same key is answered as the first time and made once. */
                "idempotency-key"?: string;
            };
            path: {
                /** @description The id of the draft. */
                draft: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description What was asked for. */
            201: {
                headers: {
                    ETag: components["headers"]["ETag"];
                    "Cache-Control": components["headers"]["CacheControl"];
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Amendment"];
                };
            };
            401: components["responses"]["Unauthenticated"];
            429: components["responses"]["QuotaExceeded"];
            500: components["responses"]["Failed"];
            /** @description What is wrong, where, and how to mend it. */
            "4XX": {
                headers: {
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description The service failed, or is too busy. Nothing was decided. */
            "5XX": {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    listPublications: {
        parameters: {
            query?: {
                /** @description How many to answer at most; 50 when left out. */
                first?: number;
                /** @description Where to go on: the `nextCursor` of the page before; in a connection its `endCursor`, or the cursor of any edge. */
                after?: string;
            };
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description What was asked for. */
            200: {
                headers: {
                    ETag: components["headers"]["ETag"];
                    "Cache-Control": components["headers"]["CacheControl"];
                    Link: components["headers"]["Link"];
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["PublicationPage"];
                };
            };
            304: components["responses"]["NotModified"];
            401: components["responses"]["Unauthenticated"];
            429: components["responses"]["QuotaExceeded"];
            500: components["responses"]["Failed"];
            /** @description What is wrong, where, and how to mend it. */
            "4XX": {
                headers: {
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description The service failed, or is too busy. Nothing was decided. */
            "5XX": {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    readPublication: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                /**
                 * @description The id of the publication.
                 * @example irc
                 */
                publication: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description What was asked for. */
            200: {
                headers: {
                    ETag: components["headers"]["ETag"];
                    "Cache-Control": components["headers"]["CacheControl"];
                    Link: components["headers"]["Link"];
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Publication"];
                };
            };
            304: components["responses"]["NotModified"];
            401: components["responses"]["Unauthenticated"];
            429: components["responses"]["QuotaExceeded"];
            500: components["responses"]["Failed"];
            /** @description What is wrong, where, and how to mend it. */
            "4XX": {
                headers: {
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description The service failed, or is too busy. Nothing was decided. */
            "5XX": {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    listReleases: {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description What was asked for. */
            200: {
                headers: {
                    ETag: components["headers"]["ETag"];
                    "Cache-Control": components["headers"]["CacheControl"];
                    Link: components["headers"]["Link"];
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Releases"];
                };
            };
            304: components["responses"]["NotModified"];
            401: components["responses"]["Unauthenticated"];
            429: components["responses"]["QuotaExceeded"];
            500: components["responses"]["Failed"];
            /** @description What is wrong, where, and how to mend it. */
            "4XX": {
                headers: {
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description The service failed, or is too busy. Nothing was decided. */
            "5XX": {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    listFacts: {
        parameters: {
            query?: {
                /** @description Only facts that rules of this part use. */
                part?: components["schemas"]["Part"];
                /** @description Only facts first seen at this hold point. */
                seenFrom?: components["schemas"]["HoldPointId"];
                /** @description How many to answer at most; 50 when left out. */
                first?: number;
                /** @description Where to go on: the `nextCursor` of the page before; in a connection its `endCursor`, or the cursor of any edge. */
                after?: string;
            };
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description What was asked for. */
            200: {
                headers: {
                    ETag: components["headers"]["ETag"];
                    "Cache-Control": components["headers"]["CacheControl"];
                    Link: components["headers"]["Link"];
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["FactPage"];
                };
            };
            304: components["responses"]["NotModified"];
            401: components["responses"]["Unauthenticated"];
            429: components["responses"]["QuotaExceeded"];
            500: components["responses"]["Failed"];
            /** @description What is wrong, where, and how to mend it. */
            "4XX": {
                headers: {
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description The service failed, or is too busy. Nothing was decided. */
            "5XX": {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    listHoldPoints: {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description What was asked for. */
            200: {
                headers: {
                    ETag: components["headers"]["ETag"];
                    "Cache-Control": components["headers"]["CacheControl"];
                    Link: components["headers"]["Link"];
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["HoldPointList"];
                };
            };
            304: components["responses"]["NotModified"];
            401: components["responses"]["Unauthenticated"];
            429: components["responses"]["QuotaExceeded"];
            500: components["responses"]["Failed"];
            /** @description What is wrong, where, and how to mend it. */
            "4XX": {
                headers: {
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description The service failed, or is too busy. Nothing was decided. */
            "5XX": {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    readForm: {
        parameters: {
            query: {
                /** @description Whose rules apply: "us-xa-101-2400000". Left out with an edition, the published texts alone are meant. */
                jurisdiction?: string;
                /** @description The permit application date, which selects what was in force. Today when left out. */
                asOf?: string;
                /** @description Takes this edition whatever is adopted: "irc-2021". */
                edition?: string;
                /** @description Which code is meant where several are adopted: "irc" for one- and two-family dwellings, "ibc" for other buildings. */
                publication?: string;
                /** @description What fills the opening. */
                kind: "window" | "door" | "slidingDoor" | "garageDoor" | "louver" | "vent" | "recess";
                /** @description Where the work stands: only what can be seen there is asked. */
                holdPoint: components["schemas"]["HoldPointId"];
                /** @description The unit that a bare number is to take; the filled form has to name it again. Left out, every length needs its unit. */
                lengthUnit?: "in" | "mm";
            };
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description What was asked for. */
            200: {
                headers: {
                    ETag: components["headers"]["ETag"];
                    "Cache-Control": components["headers"]["CacheControl"];
                    Link: components["headers"]["Link"];
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Form"];
                };
            };
            304: components["responses"]["NotModified"];
            401: components["responses"]["Unauthenticated"];
            429: components["responses"]["QuotaExceeded"];
            500: components["responses"]["Failed"];
            /** @description What is wrong, where, and how to mend it. */
            "4XX": {
                headers: {
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description The service failed, or is too busy. Nothing was decided. */
            "5XX": {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    readOpeningForm: {
        parameters: {
            query: {
                /** @description Where the work stands: only what can be seen there is asked. */
                holdPoint: components["schemas"]["HoldPointId"];
                /** @description The unit that a bare number is to take; the filled form has to name it again. Left out, every length needs its unit. */
                lengthUnit?: "in" | "mm";
            };
            header?: never;
            path: {
                /** @description The id of the project. */
                project: string;
                /** @description The client's own id of the opening within the project. */
                opening: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description What was asked for. */
            200: {
                headers: {
                    ETag: components["headers"]["ETag"];
                    "Cache-Control": components["headers"]["CacheControl"];
                    Link: components["headers"]["Link"];
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Form"];
                };
            };
            304: components["responses"]["NotModified"];
            401: components["responses"]["Unauthenticated"];
            429: components["responses"]["QuotaExceeded"];
            500: components["responses"]["Failed"];
            /** @description What is wrong, where, and how to mend it. */
            "4XX": {
                headers: {
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description The service failed, or is too busy. Nothing was decided. */
            "5XX": {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    postFormAnswers: {
        parameters: {
            query?: never;
            header?: {
                /** @description A quoted text of the caller's own, "8e03978e-40d5-43dd-bc93-6894a57f9324" with its quotes. For 24 hours the same request with the same key is answered as the first time and made once. */
                "idempotency-key"?: string;
            };
            path: {
                /** @description The id of the project. */
                project: string;
                /** @description The client's own id of the opening within the project. */
                opening: string;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                /**
                 * @example {
                 *       "id": "0199a000-0000-7000-8000-000000000005",
                 *       "at": "2026-03-02T09:00:00Z",
                 *       "by": "inspector",
                 *       "holdPoint": "lintelSet",
                 *       "method": "examine",
                 *       "answers": {
                 *         "head_support_bearing_left": "4 in"
                 *       }
                 *     }
                 */
                "application/json": components["schemas"]["FormAnswersRequest"];
            };
        };
        responses: {
            /** @description What was asked for. */
            200: {
                headers: {
                    ETag: components["headers"]["ETag"];
                    "Cache-Control": components["headers"]["CacheControl"];
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["FormAnswersAnswer"];
                };
            };
            401: components["responses"]["Unauthenticated"];
            429: components["responses"]["QuotaExceeded"];
            500: components["responses"]["Failed"];
            /** @description What is wrong, where, and how to mend it. */
            "4XX": {
                headers: {
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description The service failed, or is too busy. Nothing was decided. */
            "5XX": {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    listQuantities: {
        parameters: {
            query?: {
                /** @description Only those of this part. */
                part?: components["schemas"]["Part"];
                /** @description How many to answer at most; 50 when left out. */
                first?: number;
                /** @description Where to go on: the `nextCursor` of the page before; in a connection its `endCursor`, or the cursor of any edge. */
                after?: string;
            };
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description What was asked for. */
            200: {
                headers: {
                    ETag: components["headers"]["ETag"];
                    "Cache-Control": components["headers"]["CacheControl"];
                    Link: components["headers"]["Link"];
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["QuantityPage"];
                };
            };
            304: components["responses"]["NotModified"];
            401: components["responses"]["Unauthenticated"];
            429: components["responses"]["QuotaExceeded"];
            500: components["responses"]["Failed"];
            /** @description What is wrong, where, and how to mend it. */
            "4XX": {
                headers: {
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description The service failed, or is too busy. Nothing was decided. */
            "5XX": {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    readQuantity: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                /**
                 * @description The id of the quantity.
                 * @example lintel.lightest-angle
                 */
                quantity: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description What was asked for. */
            200: {
                headers: {
                    ETag: components["headers"]["ETag"];
                    "Cache-Control": components["headers"]["CacheControl"];
                    Link: components["headers"]["Link"];
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["QuantityDetail"];
                };
            };
            304: components["responses"]["NotModified"];
            401: components["responses"]["Unauthenticated"];
            429: components["responses"]["QuotaExceeded"];
            500: components["responses"]["Failed"];
            /** @description What is wrong, where, and how to mend it. */
            "4XX": {
                headers: {
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description The service failed, or is too busy. Nothing was decided. */
            "5XX": {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    computeQuantities: {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody: {
            content: {
                /**
                 * @example {
                 *       "quantities": [
                 *         "lintel.length",
                 *         "lintel.effective-span"
                 *       ],
                 *       "edition": "irc-2021",
                 *       "given": [
                 *         {
                 *           "from": "opening.width",
                 *           "value": "6 ft"
                 *         },
                 *         {
                 *           "from": "head.support.kind",
                 *           "value": "looseSteelAngle"
                 *         },
                 *         {
                 *           "from": "head.support.bearing",
                 *           "value": "6 in"
                 *         }
                 *       ]
                 *     }
                 */
                "application/json": components["schemas"]["ComputationRequest"];
            };
        };
        responses: {
            /** @description What was asked for. */
            200: {
                headers: {
                    ETag: components["headers"]["ETag"];
                    "Cache-Control": components["headers"]["CacheControl"];
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Computation"];
                };
            };
            401: components["responses"]["Unauthenticated"];
            429: components["responses"]["QuotaExceeded"];
            500: components["responses"]["Failed"];
            /** @description What is wrong, where, and how to mend it. */
            "4XX": {
                headers: {
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description The service failed, or is too busy. Nothing was decided. */
            "5XX": {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    takeOff: {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody: {
            content: {
                /**
                 * @example {
                 *       "jurisdiction": "us-xa-101-2400000",
                 *       "asOf": "2026-03-01",
                 *       "openings": [
                 *         {
                 *           "count": 4,
                 *           "opening": {
                 *             "reference": "W-104",
                 *             "basis": "asBuilt",
                 *             "lengthUnit": "in",
                 *             "opening": {
                 *               "kind": "window",
                 *               "width": "48",
                 *               "height": "60",
                 *               "headShape": "flat"
                 *             },
                 *             "head": {
                 *               "support": {
                 *                 "kind": "looseSteelAngle",
                 *                 "section": "L5x3-1/2x5/16",
                 *                 "bearing": [
                 *                   "4",
                 *                   "3 1/2"
                 *                 ]
                 *               },
                 *               "flashing": {
                 *                 "present": true,
                 *                 "extensionPastJamb": [
                 *                   "8",
                 *                   "8"
                 *                 ],
                 *                 "endDamHeight": [
                 *                   "2",
                 *                   "0"
                 *                 ],
                 *                 "upstand": "8"
                 *               },
                 *               "weeps": {
                 *                 "kind": "openHeadJoint",
                 *                 "spacing": "24",
                 *                 "onFlashing": true
                 *               }
                 *             }
                 *           }
                 *         }
                 *       ]
                 *     }
                 */
                "application/json": components["schemas"]["TakeOffRequest"];
            };
        };
        responses: {
            /** @description What was asked for. */
            200: {
                headers: {
                    ETag: components["headers"]["ETag"];
                    "Cache-Control": components["headers"]["CacheControl"];
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["TakeOff"];
                };
            };
            401: components["responses"]["Unauthenticated"];
            429: components["responses"]["QuotaExceeded"];
            500: components["responses"]["Failed"];
            /** @description What is wrong, where, and how to mend it. */
            "4XX": {
                headers: {
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description The service failed, or is too busy. Nothing was decided. */
            "5XX": {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    planCuts: {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody: {
            content: {
                /**
                 * @example {
                 *       "stockLengths": [
                 *         "10 ft"
                 *       ],
                 *       "pieces": [
                 *         {
                 *           "reference": "W-104",
                 *           "length": "5 ft 4 in",
                 *           "count": 4
                 *         }
                 *       ]
                 *     }
                 */
                "application/json": components["schemas"]["CutListRequest"];
            };
        };
        responses: {
            /** @description What was asked for. */
            200: {
                headers: {
                    ETag: components["headers"]["ETag"];
                    "Cache-Control": components["headers"]["CacheControl"];
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["CutListAnswer"];
                };
            };
            401: components["responses"]["Unauthenticated"];
            429: components["responses"]["QuotaExceeded"];
            500: components["responses"]["Failed"];
            /** @description What is wrong, where, and how to mend it. */
            "4XX": {
                headers: {
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description The service failed, or is too busy. Nothing was decided. */
            "5XX": {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    analyzeDrivingRain: {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody: {
            content: {
                /**
                 * @example {
                 *       "format": "table",
                 *       "azimuths": [
                 *         180
                 *       ],
                 *       "text": "time,rain,wind,from\n2013-06-10T13:00,0.4,5.1,180\n2013-06-10T14:00,1.2,6.3,190\n",
                 *       "layout": {
                 *         "time": {
                 *           "column": "time"
                 *         },
                 *         "rain": {
                 *           "column": "rain",
                 *           "unit": "mm"
                 *         },
                 *         "wind": {
                 *           "column": "wind",
                 *           "unit": "m/s"
                 *         },
                 *         "direction": {
                 *           "column": "from"
                 *         }
                 *       }
                 *     }
                 */
                "application/json": components["schemas"]["DrivingRainRequest"];
            };
        };
        responses: {
            /** @description What was asked for. */
            200: {
                headers: {
                    ETag: components["headers"]["ETag"];
                    "Cache-Control": components["headers"]["CacheControl"];
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["DrivingRainAnalysis"];
                };
            };
            401: components["responses"]["Unauthenticated"];
            429: components["responses"]["QuotaExceeded"];
            500: components["responses"]["Failed"];
            /** @description What is wrong, where, and how to mend it. */
            "4XX": {
                headers: {
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description The service failed, or is too busy. Nothing was decided. */
            "5XX": {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    listProjects: {
        parameters: {
            query?: {
                /** @description How many to answer at most; 50 when left out. */
                first?: number;
                /** @description Where to go on: the `nextCursor` of the page before; in a connection its `endCursor`, or the cursor of any edge. */
                after?: string;
            };
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description What was asked for. */
            200: {
                headers: {
                    ETag: components["headers"]["ETag"];
                    "Cache-Control": components["headers"]["CacheControl"];
                    Link: components["headers"]["Link"];
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["ProjectPage"];
                };
            };
            304: components["responses"]["NotModified"];
            401: components["responses"]["Unauthenticated"];
            429: components["responses"]["QuotaExceeded"];
            500: components["responses"]["Failed"];
            /** @description What is wrong, where, and how to mend it. */
            "4XX": {
                headers: {
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description The service failed, or is too busy. Nothing was decided. */
            "5XX": {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    createProject: {
        parameters: {
            query?: never;
            header?: {
                /** @description A quoted text of the caller's own, "8e03978e-40d5-43dd-bc93-6894a57f9324" with its quotes. For 24 hours the same request with the same key is answered as the first time and made once. */
                "idempotency-key"?: string;
            };
            path?: never;
            cookie?: never;
        };
        requestBody: {
            content: {
                /**
                 * @example {
                 *       "id": "0199a000-0000-7000-8000-000000000001",
                 *       "title": "12 Quarry Walk",
                 *       "jurisdiction": "us-xa-101-2400000",
                 *       "asOf": "2026-03-01"
                 *     }
                 */
                "application/json": components["schemas"]["ProjectRequest"];
            };
        };
        responses: {
            /** @description What was asked for. */
            201: {
                headers: {
                    ETag: components["headers"]["ETag"];
                    "Cache-Control": components["headers"]["CacheControl"];
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Project"];
                };
            };
            401: components["responses"]["Unauthenticated"];
            429: components["responses"]["QuotaExceeded"];
            500: components["responses"]["Failed"];
            /** @description What is wrong, where, and how to mend it. */
            "4XX": {
                headers: {
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description The service failed, or is too busy. Nothing was decided. */
            "5XX": {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    readProject: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                /** @description The id of the project. */
                project: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description What was asked for. */
            200: {
                headers: {
                    ETag: components["headers"]["ETag"];
                    "Cache-Control": components["headers"]["CacheControl"];
                    Link: components["headers"]["Link"];
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Project"];
                };
            };
            304: components["responses"]["NotModified"];
            401: components["responses"]["Unauthenticated"];
            429: components["responses"]["QuotaExceeded"];
            500: components["responses"]["Failed"];
            /** @description What is wrong, where, and how to mend it. */
            "4XX": {
                headers: {
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description The service failed, or is too busy. Nothing was decided. */
            "5XX": {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    changeProject: {
        parameters: {
            query?: never;
            header: {
                /** @description The ETag of what the change is based on. The part up to the semicolon decides: the version. */
                "if-match": string;
            };
            path: {
                /** @description The id of the project. */
                project: string;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                /**
                 * @example {
                 *       "title": "12 Quarry Walk, east wing",
                 *       "jurisdiction": "us-xa-101-2400000",
                 *       "asOf": "2026-03-01"
                 *     }
                 */
                "application/json": components["schemas"]["ProjectChange"];
            };
        };
        responses: {
            /** @description What was asked for. */
            200: {
                headers: {
                    ETag: components["headers"]["ETag"];
                    "Cache-Control": components["headers"]["CacheControl"];
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Project"];
                };
            };
            401: components["responses"]["Unauthenticated"];
            429: components["responses"]["QuotaExceeded"];
            500: components["responses"]["Failed"];
            /** @description What is wrong, where, and how to mend it. */
            "4XX": {
                headers: {
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description The service failed, or is too busy. Nothing was decided. */
            "5XX": {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    postEntries: {
        parameters: {
            query?: never;
            header?: {
                /** @description A quoted text of the caller's own, "8e03978e-40d5-43dd-bc93-6894a57f9324" with its quotes. For 24 hours the same request with the same key is answered as the first time and made once. */
                "idempotency-key"?: string;
            };
            path: {
                /** @description The id of the project. */
                project: string;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                /**
                 * @example {
                 *       "entries": [
                 *         {
                 *           "id": "0199a000-0000-7000-8000-000000000002",
                 *           "opening": "W-104",
                 *           "at": "2026-03-01T15:00:00Z",
                 *           "by": "design-office",
                 *           "design": {
                 *             "description": {
                 *               "reference": "W-104",
                 *               "basis": "asBuilt",
                 *               "lengthUnit": "in",
                 *               "opening": {
                 *                 "kind": "window",
                 *                 "width": "48",
                 *                 "height": "60",
                 *                 "headShape": "flat"
                 *               },
                 *               "head": {
                 *                 "support": {
                 *                   "kind": "looseSteelAngle",
                 *                   "section": "L5x3-1/2x5/16",
                 *                   "bearing": [
                 *                     "4",
                 *                     "3 1/2"
                 *                   ]
                 *                 },
                 *                 "flashing": {
                 *                   "present": true,
                 *                   "extensionPastJamb": [
                 *                     "8",
                 *                     "8"
                 *                   ],
                 *                   "endDamHeight": [
                 *                     "2",
                 *                     "0"
                 *                   ],
                 *                   "upstand": "8"
                 *                 },
                 *                 "weeps": {
                 *                   "kind": "openHeadJoint",
                 *                   "spacing": "24",
                 *                   "onFlashing": true
                 *                 }
                 *               }
                 *             }
                 *           }
                 *         },
                 *         {
                 *           "id": "0199a000-0000-7000-8000-000000000003",
                 *           "opening": "W-104",
                 *           "at": "2026-03-02T09:00:00Z",
                 *           "by": "inspector",
                 *           "observation": {
                 *             "fact": "head.support.bearing",
                 *             "member": "right",
                 *             "value": "3 1/2 in",
                 *             "method": "examine",
                 *             "holdPoint": "lintelSet"
                 *           }
                 *         }
                 *       ]
                 *     }
                 */
                "application/json": components["schemas"]["EntriesRequest"];
            };
        };
        responses: {
            /** @description What was asked for. */
            200: {
                headers: {
                    ETag: components["headers"]["ETag"];
                    "Cache-Control": components["headers"]["CacheControl"];
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["EntriesAnswer"];
                };
            };
            401: components["responses"]["Unauthenticated"];
            429: components["responses"]["QuotaExceeded"];
            500: components["responses"]["Failed"];
            /** @description What is wrong, where, and how to mend it. */
            "4XX": {
                headers: {
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description The service failed, or is too busy. Nothing was decided. */
            "5XX": {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    importSchedule: {
        parameters: {
            query?: never;
            header?: {
                /** @description A quoted text of the caller's own, "8e03978e-40d5-43dd-bc93-6894a57f9324" with its quotes. For 24 hours the same request with the same key is answered as the first time and made once. */
                "idempotency-key"?: string;
            };
            path: {
                /** @description The id of the project. */
                project: string;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                /**
                 * @example {
                 *       "import": "0199a000-0000-7000-8000-000000000004",
                 *       "at": "2026-03-02T10:00:00Z",
                 *       "by": "design-office",
                 *       "lengthUnit": "in",
                 *       "markColumn": "Mark",
                 *       "csv": "Mark,Type,Width,Height\nW-201,DH,48,60\nW-202,DH,36,48\n",
                 *       "columns": [
                 *         {
                 *           "column": "Type",
                 *           "fact": "opening.kind",
                 *           "values": [
                 *             {
                 *               "cell": "DH",
                 *               "value": "window"
                 *             }
                 *           ]
                 *         },
                 *         {
                 *           "column": "Width",
                 *           "fact": "opening.width"
                 *         },
                 *         {
                 *           "column": "Height",
                 *           "fact": "opening.height"
                 *         }
                 *       ]
                 *     }
                 */
                "application/json": components["schemas"]["ScheduleImportRequest"];
            };
        };
        responses: {
            /** @description What was asked for. */
            200: {
                headers: {
                    ETag: components["headers"]["ETag"];
                    "Cache-Control": components["headers"]["CacheControl"];
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["ScheduleImport"];
                };
            };
            401: components["responses"]["Unauthenticated"];
            429: components["responses"]["QuotaExceeded"];
            500: components["responses"]["Failed"];
            /** @description What is wrong, where, and how to mend it. */
            "4XX": {
                headers: {
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description The service failed, or is too busy. Nothing was decided. */
            "5XX": {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    readJournal: {
        parameters: {
            query?: {
                /** @description Entries after this sequence. */
                after?: number;
                /** @description How many to answer at most; 100 when left out. */
                first?: number;
            };
            header?: never;
            path: {
                /** @description The id of the project. */
                project: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description What was asked for. */
            200: {
                headers: {
                    ETag: components["headers"]["ETag"];
                    "Cache-Control": components["headers"]["CacheControl"];
                    Link: components["headers"]["Link"];
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["JournalPage"];
                };
            };
            304: components["responses"]["NotModified"];
            401: components["responses"]["Unauthenticated"];
            429: components["responses"]["QuotaExceeded"];
            500: components["responses"]["Failed"];
            /** @description What is wrong, where, and how to mend it. */
            "4XX": {
                headers: {
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description The service failed, or is too busy. Nothing was decided. */
            "5XX": {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    listOpenings: {
        parameters: {
            query?: {
                /** @description How many to answer at most; 50 when left out. */
                first?: number;
                /** @description Where to go on: the `nextCursor` of the page before; in a connection its `endCursor`, or the cursor of any edge. */
                after?: string;
            };
            header?: never;
            path: {
                /** @description The id of the project. */
                project: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description What was asked for. */
            200: {
                headers: {
                    ETag: components["headers"]["ETag"];
                    "Cache-Control": components["headers"]["CacheControl"];
                    Link: components["headers"]["Link"];
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["OpeningPage"];
                };
            };
            304: components["responses"]["NotModified"];
            401: components["responses"]["Unauthenticated"];
            429: components["responses"]["QuotaExceeded"];
            500: components["responses"]["Failed"];
            /** @description What is wrong, where, and how to mend it. */
            "4XX": {
                headers: {
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description The service failed, or is too busy. Nothing was decided. */
            "5XX": {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    readBuilding: {
        parameters: {
            query?: {
                /** @description By which reading of the record; asBuiltOverDesign when left out. */
                basis?: components["schemas"]["RecordBasis"];
                /** @description Only openings whose id starts so: a story, an elevation. At most 1000 are answered at once. */
                startsWith?: string;
                /** @description Only what is to be looked at on the walk at this hold point; every walk when left out. */
                holdPoint?: components["schemas"]["HoldPointId"];
            };
            header?: never;
            path: {
                /** @description The id of the project. */
                project: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description What was asked for. */
            200: {
                headers: {
                    ETag: components["headers"]["ETag"];
                    "Cache-Control": components["headers"]["CacheControl"];
                    Link: components["headers"]["Link"];
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Building"];
                };
            };
            304: components["responses"]["NotModified"];
            401: components["responses"]["Unauthenticated"];
            429: components["responses"]["QuotaExceeded"];
            500: components["responses"]["Failed"];
            /** @description What is wrong, where, and how to mend it. */
            "4XX": {
                headers: {
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description The service failed, or is too busy. Nothing was decided. */
            "5XX": {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    readBuildingTable: {
        parameters: {
            query?: {
                /** @description By which reading of the record; asBuiltOverDesign when left out. */
                basis?: components["schemas"]["RecordBasis"];
                /** @description Only openings whose id starts so: a story, an elevation. At most 1000 are answered at once. */
                startsWith?: string;
                /** @description Only what is to be looked at on the walk at this hold point; every walk when left out. */
                holdPoint?: components["schemas"]["HoldPointId"];
                /** @description yes: led by a byte order mark, without which some spreadsheets do not read UTF-8; no when left out. */
                byteOrderMark?: components["schemas"]["ByteOrderMark"];
            };
            header?: never;
            path: {
                /** @description The id of the project. */
                project: string;
                /** @description Which table; `flashingCuts` is the cutting list. */
                table: "openings" | "parts" | "holdPoints" | "readiness" | "failures" | "toMeasure" | "lintels" | "flashing" | "flashingCuts" | "weepsAndTies" | "gaps";
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description What was asked for. */
            200: {
                headers: {
                    ETag: components["headers"]["ETag"];
                    "Cache-Control": components["headers"]["CacheControl"];
                    Link: components["headers"]["Link"];
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content: {
                    "text/csv": string;
                };
            };
            304: components["responses"]["NotModified"];
            401: components["responses"]["Unauthenticated"];
            429: components["responses"]["QuotaExceeded"];
            500: components["responses"]["Failed"];
            /** @description What is wrong, where, and how to mend it. */
            "4XX": {
                headers: {
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description The service failed, or is too busy. Nothing was decided. */
            "5XX": {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    readOpeningRecord: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                /** @description The id of the project. */
                project: string;
                /** @description The client's own id of the opening within the project. */
                opening: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description What was asked for. */
            200: {
                headers: {
                    ETag: components["headers"]["ETag"];
                    "Cache-Control": components["headers"]["CacheControl"];
                    Link: components["headers"]["Link"];
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["OpeningRecord"];
                };
            };
            304: components["responses"]["NotModified"];
            401: components["responses"]["Unauthenticated"];
            429: components["responses"]["QuotaExceeded"];
            500: components["responses"]["Failed"];
            /** @description What is wrong, where, and how to mend it. */
            "4XX": {
                headers: {
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description The service failed, or is too busy. Nothing was decided. */
            "5XX": {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    evaluateRecordedOpening: {
        parameters: {
            query: {
                /** @description By which reading of the record. */
                basis: "asDesigned" | "asBuilt" | "asBuiltOverDesign";
            };
            header?: never;
            path: {
                /** @description The id of the project. */
                project: string;
                /** @description The client's own id of the opening within the project. */
                opening: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description What was asked for. */
            200: {
                headers: {
                    ETag: components["headers"]["ETag"];
                    "Cache-Control": components["headers"]["CacheControl"];
                    Link: components["headers"]["Link"];
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Evaluation"];
                };
            };
            304: components["responses"]["NotModified"];
            401: components["responses"]["Unauthenticated"];
            429: components["responses"]["QuotaExceeded"];
            500: components["responses"]["Failed"];
            /** @description What is wrong, where, and how to mend it. */
            "4XX": {
                headers: {
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description The service failed, or is too busy. Nothing was decided. */
            "5XX": {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    exportProject: {
        parameters: {
            query?: {
                /** @description misses: what is not met. open: that, and what is not determined. all: every finding. All for sarif and oscal, misses for bcf when left out; a bcf never has topics for what is met. */
                findings?: "misses" | "open" | "all";
                /** @description Only openings whose id starts so: a story, an elevation. At most 200 openings go into one document. */
                startsWith?: string;
            };
            header?: never;
            path: {
                /** @description The id of the project. */
                project: string;
                /** @description sarif: one run with a result for each rule at each place. oscal: assessment results with observations, findings and risks. bcf: a zip with one topic for each miss. */
                format: "sarif" | "oscal" | "bcf";
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description What was asked for. */
            200: {
                headers: {
                    ETag: components["headers"]["ETag"];
                    "Cache-Control": components["headers"]["CacheControl"];
                    Link: components["headers"]["Link"];
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content: {
                    "application/sarif+json": Record<string, never>;
                    "application/json": Record<string, never>;
                    "application/zip": string;
                };
            };
            304: components["responses"]["NotModified"];
            401: components["responses"]["Unauthenticated"];
            429: components["responses"]["QuotaExceeded"];
            500: components["responses"]["Failed"];
            /** @description What is wrong, where, and how to mend it. */
            "4XX": {
                headers: {
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description The service failed, or is too busy. Nothing was decided. */
            "5XX": {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    reportOpening: {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody: {
            content: {
                /**
                 * @example {
                 *       "jurisdiction": "us-xa-101-2400000",
                 *       "asOf": "2026-03-01",
                 *       "opening": {
                 *         "reference": "W-104",
                 *         "basis": "asBuilt",
                 *         "lengthUnit": "in",
                 *         "opening": {
                 *           "kind": "window",
                 *           "width": "48",
                 *           "height": "60",
                 *           "headShape": "flat"
                 *         },
                 *         "head": {
                 *           "support": {
                 *             "kind": "looseSteelAngle",
                 *             "section": "L5x3-1/2x5/16",
                 *             "bearing": [
                 *               "4",
                 *               "3 1/2"
                 *             ]
                 *           },
                 *           "flashing": {
                 *             "present": true,
                 *             "extensionPastJamb": [
                 *               "8",
                 *               "8"
                 *             ],
                 *             "endDamHeight": [
                 *               "2",
                 *               "0"
                 *             ],
                 *             "upstand": "8"
                 *           },
                 *           "weeps": {
                 *             "kind": "openHeadJoint",
                 *             "spacing": "24",
                 *             "onFlashing": true
                 *           }
                 *         }
                 *       }
                 *     }
                 */
                "application/json": components["schemas"]["ReportRequest"];
            };
        };
        responses: {
            /** @description What was asked for. */
            200: {
                headers: {
                    ETag: components["headers"]["ETag"];
                    "Cache-Control": components["headers"]["CacheControl"];
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content: {
                    "text/html": string;
                };
            };
            401: components["responses"]["Unauthenticated"];
            429: components["responses"]["QuotaExceeded"];
            500: components["responses"]["Failed"];
            /** @description What is wrong, where, and how to mend it. */
            "4XX": {
                headers: {
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description The service failed, or is too busy. Nothing was decided. */
            "5XX": {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    readEvaluationReport: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                /** @description The id of a kept evaluation. */
                evaluation: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description What was asked for. */
            200: {
                headers: {
                    ETag: components["headers"]["ETag"];
                    "Cache-Control": components["headers"]["CacheControl"];
                    Link: components["headers"]["Link"];
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content: {
                    "text/html": string;
                };
            };
            304: components["responses"]["NotModified"];
            401: components["responses"]["Unauthenticated"];
            429: components["responses"]["QuotaExceeded"];
            500: components["responses"]["Failed"];
            /** @description What is wrong, where, and how to mend it. */
            "4XX": {
                headers: {
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description The service failed, or is too busy. Nothing was decided. */
            "5XX": {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    readBuildingReport: {
        parameters: {
            query?: {
                /** @description By which reading of the record; asBuiltOverDesign when left out. */
                basis?: components["schemas"]["RecordBasis"];
                /** @description Only openings whose id starts so: a story, an elevation. At most 1000 are answered at once. */
                startsWith?: string;
                /** @description Only what is to be looked at on the walk at this hold point; every walk when left out. */
                holdPoint?: components["schemas"]["HoldPointId"];
            };
            header?: never;
            path: {
                /** @description The id of the project. */
                project: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description What was asked for. */
            200: {
                headers: {
                    ETag: components["headers"]["ETag"];
                    "Cache-Control": components["headers"]["CacheControl"];
                    Link: components["headers"]["Link"];
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content: {
                    "text/html": string;
                };
            };
            304: components["responses"]["NotModified"];
            401: components["responses"]["Unauthenticated"];
            429: components["responses"]["QuotaExceeded"];
            500: components["responses"]["Failed"];
            /** @description What is wrong, where, and how to mend it. */
            "4XX": {
                headers: {
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description The service failed, or is too busy. Nothing was decided. */
            "5XX": {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    readOpeningReport: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                /** @description The id of the project. */
                project: string;
                /** @description The client's own id of the opening within the project. */
                opening: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description What was asked for. */
            200: {
                headers: {
                    ETag: components["headers"]["ETag"];
                    "Cache-Control": components["headers"]["CacheControl"];
                    Link: components["headers"]["Link"];
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content: {
                    "text/html": string;
                };
            };
            304: components["responses"]["NotModified"];
            401: components["responses"]["Unauthenticated"];
            429: components["responses"]["QuotaExceeded"];
            500: components["responses"]["Failed"];
            /** @description What is wrong, where, and how to mend it. */
            "4XX": {
                headers: {
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description The service failed, or is too busy. Nothing was decided. */
            "5XX": {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    listTokens: {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description What was asked for. */
            200: {
                headers: {
                    ETag: components["headers"]["ETag"];
                    "Cache-Control": components["headers"]["CacheControl"];
                    Link: components["headers"]["Link"];
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["TokenList"];
                };
            };
            304: components["responses"]["NotModified"];
            401: components["responses"]["Unauthenticated"];
            429: components["responses"]["QuotaExceeded"];
            500: components["responses"]["Failed"];
            /** @description What is wrong, where, and how to mend it. */
            "4XX": {
                headers: {
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description The service failed, or is too busy. Nothing was decided. */
            "5XX": {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    createToken: {
        parameters: {
            query?: never;
            header?: {
                /** @description A quoted text of the caller's own, "8e03978e-40d5-43dd-bc93-6894a57f9324" with its quotes. For 24 hours the same request with the same key is answered as the first time and made once. */
                "idempotency-key"?: string;
            };
            path?: never;
            cookie?: never;
        };
        requestBody: {
            content: {
                /**
                 * @example {
                 *       "title": "form app of the inspectors",
                 *       "record": true,
                 *       "expiresAt": "2027-03-01T00:00:00Z"
                 *     }
                 */
                "application/json": components["schemas"]["TokenRequest"];
            };
        };
        responses: {
            /** @description What was asked for. */
            201: {
                headers: {
                    ETag: components["headers"]["ETag"];
                    "Cache-Control": components["headers"]["CacheControl"];
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["CreatedToken"];
                };
            };
            401: components["responses"]["Unauthenticated"];
            429: components["responses"]["QuotaExceeded"];
            500: components["responses"]["Failed"];
            /** @description What is wrong, where, and how to mend it. */
            "4XX": {
                headers: {
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description The service failed, or is too busy. Nothing was decided. */
            "5XX": {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    revokeToken: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                /** @description The id of the token. */
                token: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description What was asked for. */
            200: {
                headers: {
                    ETag: components["headers"]["ETag"];
                    "Cache-Control": components["headers"]["CacheControl"];
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["RevokedToken"];
                };
            };
            401: components["responses"]["Unauthenticated"];
            429: components["responses"]["QuotaExceeded"];
            500: components["responses"]["Failed"];
            /** @description What is wrong, where, and how to mend it. */
            "4XX": {
                headers: {
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description The service failed, or is too busy. Nothing was decided. */
            "5XX": {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    listWebhooks: {
        parameters: {
            query?: {
                /** @description How many to answer at most; 50 when left out. */
                first?: number;
                /** @description Where to go on: the `nextCursor` of the page before; in a connection its `endCursor`, or the cursor of any edge. */
                after?: string;
            };
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description What was asked for. */
            200: {
                headers: {
                    ETag: components["headers"]["ETag"];
                    "Cache-Control": components["headers"]["CacheControl"];
                    Link: components["headers"]["Link"];
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["WebhookPage"];
                };
            };
            304: components["responses"]["NotModified"];
            401: components["responses"]["Unauthenticated"];
            429: components["responses"]["QuotaExceeded"];
            500: components["responses"]["Failed"];
            /** @description What is wrong, where, and how to mend it. */
            "4XX": {
                headers: {
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description The service failed, or is too busy. Nothing was decided. */
            "5XX": {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    createWebhook: {
        parameters: {
            query?: never;
            header?: {
                /** @description A quoted text of the caller's own, "8e03978e-40d5-43dd-bc93-6894a57f9324" with its quotes. For 24 hours the same request with the same key is answered as the first time and made once. */
                "idempotency-key"?: string;
            };
            path?: never;
            cookie?: never;
        };
        requestBody: {
            content: {
                /**
                 * @example {
                 *       "target": "https://hooks.example.com/openings",
                 *       "eventTypes": [
                 *         "openingRecorded",
                 *         "holdPointSignedOff"
                 *       ],
                 *       "description": "readiness board of the site office"
                 *     }
                 */
                "application/json": components["schemas"]["WebhookRequest"];
            };
        };
        responses: {
            /** @description What was asked for. */
            201: {
                headers: {
                    ETag: components["headers"]["ETag"];
                    "Cache-Control": components["headers"]["CacheControl"];
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["WebhookWithSecret"];
                };
            };
            401: components["responses"]["Unauthenticated"];
            429: components["responses"]["QuotaExceeded"];
            500: components["responses"]["Failed"];
            /** @description What is wrong, where, and how to mend it. */
            "4XX": {
                headers: {
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description The service failed, or is too busy. Nothing was decided. */
            "5XX": {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    readWebhook: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                /** @description The id of the webhook. */
                webhook: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description What was asked for. */
            200: {
                headers: {
                    ETag: components["headers"]["ETag"];
                    "Cache-Control": components["headers"]["CacheControl"];
                    Link: components["headers"]["Link"];
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Webhook"];
                };
            };
            304: components["responses"]["NotModified"];
            401: components["responses"]["Unauthenticated"];
            429: components["responses"]["QuotaExceeded"];
            500: components["responses"]["Failed"];
            /** @description What is wrong, where, and how to mend it. */
            "4XX": {
                headers: {
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description The service failed, or is too busy. Nothing was decided. */
            "5XX": {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    deleteWebhook: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                /** @description The id of the webhook. */
                webhook: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description What was asked for. */
            200: {
                headers: {
                    ETag: components["headers"]["ETag"];
                    "Cache-Control": components["headers"]["CacheControl"];
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["DeletedWebhook"];
                };
            };
            401: components["responses"]["Unauthenticated"];
            429: components["responses"]["QuotaExceeded"];
            500: components["responses"]["Failed"];
            /** @description What is wrong, where, and how to mend it. */
            "4XX": {
                headers: {
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description The service failed, or is too busy. Nothing was decided. */
            "5XX": {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    rotateWebhookSecret: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                /** @description The id of the webhook. */
                webhook: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description What was asked for. */
            201: {
                headers: {
                    ETag: components["headers"]["ETag"];
                    "Cache-Control": components["headers"]["CacheControl"];
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["WebhookWithSecret"];
                };
            };
            401: components["responses"]["Unauthenticated"];
            429: components["responses"]["QuotaExceeded"];
            500: components["responses"]["Failed"];
            /** @description What is wrong, where, and how to mend it. */
            "4XX": {
                headers: {
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description The service failed, or is too busy. Nothing was decided. */
            "5XX": {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    enableWebhook: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                /** @description The id of the webhook. */
                webhook: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description What was asked for. */
            200: {
                headers: {
                    ETag: components["headers"]["ETag"];
                    "Cache-Control": components["headers"]["CacheControl"];
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Webhook"];
                };
            };
            401: components["responses"]["Unauthenticated"];
            429: components["responses"]["QuotaExceeded"];
            500: components["responses"]["Failed"];
            /** @description What is wrong, where, and how to mend it. */
            "4XX": {
                headers: {
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description The service failed, or is too busy. Nothing was decided. */
            "5XX": {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    pingWebhook: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                /** @description The id of the webhook. */
                webhook: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description What was asked for. */
            202: {
                headers: {
                    ETag: components["headers"]["ETag"];
                    "Cache-Control": components["headers"]["CacheControl"];
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Delivery"];
                };
            };
            401: components["responses"]["Unauthenticated"];
            429: components["responses"]["QuotaExceeded"];
            500: components["responses"]["Failed"];
            /** @description What is wrong, where, and how to mend it. */
            "4XX": {
                headers: {
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description The service failed, or is too busy. Nothing was decided. */
            "5XX": {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    listDeliveries: {
        parameters: {
            query?: {
                /** @description Only deliveries in this state. */
                state?: "due" | "delivered" | "givenUp";
                /** @description How many to answer at most; 50 when left out. */
                first?: number;
                /** @description Where to go on: the `nextCursor` of the page before; in a connection its `endCursor`, or the cursor of any edge. */
                after?: string;
            };
            header?: never;
            path: {
                /** @description The id of the webhook. */
                webhook: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description What was asked for. */
            200: {
                headers: {
                    ETag: components["headers"]["ETag"];
                    "Cache-Control": components["headers"]["CacheControl"];
                    Link: components["headers"]["Link"];
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["DeliveryPage"];
                };
            };
            304: components["responses"]["NotModified"];
            401: components["responses"]["Unauthenticated"];
            429: components["responses"]["QuotaExceeded"];
            500: components["responses"]["Failed"];
            /** @description What is wrong, where, and how to mend it. */
            "4XX": {
                headers: {
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description The service failed, or is too busy. Nothing was decided. */
            "5XX": {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    replayDelivery: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                /** @description The id of the webhook. */
                webhook: string;
                /** @description The id of the delivery. */
                delivery: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description What was asked for. */
            202: {
                headers: {
                    ETag: components["headers"]["ETag"];
                    "Cache-Control": components["headers"]["CacheControl"];
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Delivery"];
                };
            };
            401: components["responses"]["Unauthenticated"];
            429: components["responses"]["QuotaExceeded"];
            500: components["responses"]["Failed"];
            /** @description What is wrong, where, and how to mend it. */
            "4XX": {
                headers: {
                    "RateLimit-Policy": components["headers"]["RateLimitPolicy"];
                    RateLimit: components["headers"]["RateLimit"];
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description The service failed, or is too busy. Nothing was decided. */
            "5XX": {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
}
