package org.tankrounds.walls;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Who may have what: first the kinds of address by caller, then every address with its kind. An address that
 * is missing here fails the matrix.
 */
final class Expectations {

    /**
     * In the order of the table's columns. Those elsewhere belong to another chapter than the things asked
     * for.
     */
    enum Visitor {
        NOBODY, DISABLED, TEACHER, OTHER_TEACHER, MENTOR, COORDINATOR,
        TEACHER_ELSEWHERE, MENTOR_ELSEWHERE, COORDINATOR_ELSEWHERE,
        CARD, OTHER_TANKS_CARD, CARD_ELSEWHERE, REVOKED_CARD,
        TANK_TOKEN, OTHER_TANKS_TOKEN, TANK_TOKEN_ELSEWHERE,
        CHAPTER_TOKEN, CHAPTER_TOKEN_ELSEWHERE, REVOKED_TOKEN
    }

    /** "own" is an answer about the caller's own chapter; "ask" asks to sign in; "-" is not found. */
    private static final String KINDS = """
            kind                 |no  dis |tea t2  men coo |tea men coo |crd cr2 crd rev |tok to2 tok |chp chp |rev
            for everybody        |yes yes |yes yes yes yes |yes yes yes |yes yes yes yes |yes yes yes |yes yes |yes
            behind a secret link |-   -   |-   -   -   -   |-   -   -   |-   -   -   -   |-   -   -   |-   -   |-
            one's own page       |ask ask |own own own own |own own own |-   -   -   ask |ask ask ask |ask ask |ask
            one's own outbox     |ask ask |own own own own |own own own |own own own ask |ask ask ask |ask ask |ask
            teacher's page       |ask ask |own own -   -   |own -   -   |-   -   -   ask |ask ask ask |ask ask |ask
            rounds' page         |ask ask |-   -   own own |-   own own |-   -   -   ask |ask ask ask |ask ask |ask
            coordinator's page   |ask ask |-   -   -   own |-   -   own |-   -   -   ask |ask ask ask |ask ask |ask
            coordinator's thing  |ask ask |-   -   -   own |-   -   -   |-   -   -   ask |ask ask ask |ask ask |ask
            rounds' thing        |ask ask |-   -   own own |-   -   -   |-   -   -   ask |ask ask ask |ask ask |ask
            chapter's thing      |ask ask |own own own own |-   -   -   |-   -   -   ask |ask ask ask |ask ask |ask
            tank's page          |ask ask |own -   own own |-   -   -   |-   -   -   ask |ask ask ask |ask ask |ask
            class's page         |ask ask |own -   own own |-   -   -   |own -   -   ask |ask ask ask |ask ask |ask
            tank for the rounds  |ask ask |-   -   own own |-   -   -   |-   -   -   ask |ask ask ask |ask ask |ask
            tank in one's care   |ask ask |own -   -   own |-   -   -   |-   -   -   ask |ask ask ask |ask ask |ask
            tank for scripts     |401 401 |401 401 401 401 |401 401 401 |401 401 401 401 |own -   -   |own -   |401
            chapter for scripts  |401 401 |401 401 401 401 |401 401 401 |401 401 401 401 |403 403 403 |own own |401
            season for scripts   |401 401 |401 401 401 401 |401 401 401 |401 401 401 401 |403 403 403 |own -   |401
            """;

    private static final String ROUTES = """
            GET  /healthz                                          | for everybody
            HEAD /healthz                                          | for everybody
            GET  /readyz                                           | for everybody
            HEAD /readyz                                           | for everybody
            GET  /metrics                                          | for everybody
            GET  /openapi.yaml                                     | for everybody
            GET  /assets/{hash}/{file}                             | for everybody
            GET  /sw.js                                            | for everybody
            GET  /app.webmanifest                                  | for everybody
            GET  /api/ping                                         | for everybody
            GET  /                                                 | for everybody
            GET  /help                                             | for everybody
            GET  /sign-in                                          | for everybody
            POST /sign-in                                          | for everybody
            POST /sign-out                                         | for everybody
            GET  /card                                             | for everybody
            GET  /card/{code}                                      | for everybody
            POST /card                                             | for everybody
            POST /language                                         | for everybody

            GET  /set-up/{link}                                    | behind a secret link
            POST /set-up/{link}                                    | behind a secret link
            GET  /invitations/{link}                               | behind a secret link
            GET  /handed-over/{link}                               | behind a secret link
            GET  /handed-over/{link}/{file}                        | behind a secret link
            POST /invitations/{link}                               | behind a secret link

            GET  /account                                          | one's own page
            POST /account/speech                                   | one's own page
            POST /account/password                                 | one's own page
            GET  /outbox                                           | one's own outbox

            GET  /tanks                                            | teacher's page
            GET  /rounds                                           | rounds' page

            GET  /tanks/{tank}                                     | class's page
            GET  /tanks/{tank}/series.json                         | class's page
            GET  /tanks/{tank}/log                                 | class's page
            POST /tanks/{tank}/log                                 | class's page
            GET  /tanks/{tank}/readings.csv                        | class's page
            GET  /tanks/{tank}/sheet                                | class's page
            GET  /tanks/{tank}/sheet.pdf                            | class's page
            GET  /tanks/{tank}/what-to-do                           | class's page
            GET  /tanks/{tank}/what-to-do.pdf                       | class's page
            GET  /tanks/{tank}/month                                | tank's page
            POST /tanks/{tank}/month                                | tank's page
            GET  /tanks/{tank}/readings/{reading}                  | tank's page
            POST /tanks/{tank}/readings/{reading}                  | tank's page

            GET  /tanks/{tank}/class                               | class's page
            POST /tanks/{tank}/tasks                               | tank for the rounds
            POST /tanks/{tank}/tasks/{task}/done                   | class's page
            POST /tanks/{tank}/tasks/{task}/undone                 | class's page
            POST /tanks/{tank}/tasks/{task}/dropped                | tank for the rounds
            POST /tanks/{tank}/advice/{act}/done                   | class's page
            GET  /tanks/{tank}/visits                              | tank's page
            POST /tanks/{tank}/visits                              | tank for the rounds
            POST /tanks/{tank}/visits/{visit}/withdrawn            | tank for the rounds
            GET  /tanks/{tank}/breaks                              | class's page
            GET  /tanks/{tank}/breaks.ics                          | class's page
            POST /tanks/{tank}/breaks                              | tank's page
            POST /tanks/{tank}/breaks/{break}                      | tank's page
            POST /tanks/{tank}/breaks/{break}/dropped              | tank's page
            GET  /tanks/{tank}/fish                                | class's page
            GET  /tanks/{tank}/fish.csv                            | class's page
            POST /tanks/{tank}/fish/looks                          | class's page
            POST /tanks/{tank}/fish/looks/{look}/withdrawn         | class's page
            POST /tanks/{tank}/fish/samples                        | class's page
            POST /tanks/{tank}/fish/samples/{sample}/withdrawn     | class's page

            GET  /tanks/{tank}/card                                | tank in one's care
            POST /tanks/{tank}/card                                | tank in one's care
            POST /tanks/{tank}/card/paper                          | tank in one's care
            POST /tanks/{tank}/card/revoked                        | tank in one's care

            GET  /tanks/{tank}/days/{day}                          | class's page

            GET  /tanks/{tank}/files                               | tank in one's care
            POST /tanks/{tank}/files                               | tank in one's care
            GET  /tanks/{tank}/files/{file}                        | tank in one's care
            POST /tanks/{tank}/files/{file}                        | tank in one's care
            POST /tanks/{tank}/files/{file}/taken-back             | tank in one's care

            GET  /people                                           | coordinator's page
            POST /people                                           | coordinator's page
            GET  /people/new                                       | coordinator's page
            GET  /people/{person}                                  | coordinator's thing
            POST /people/{person}                                  | coordinator's thing
            POST /people/{person}/invitation                       | coordinator's thing
            POST /people/{person}/disabled                         | coordinator's thing
            POST /people/{person}/enabled                          | coordinator's thing
            GET  /tokens                                           | coordinator's page
            POST /tokens                                           | coordinator's page
            POST /tokens/{token}/revoked                           | coordinator's thing

            GET  /places                                           | coordinator's page
            GET  /places/schools/new                               | coordinator's page
            POST /places/schools                                   | coordinator's page
            GET  /places/schools/{school}                          | coordinator's thing
            POST /places/schools/{school}                          | coordinator's thing
            GET  /places/schools/{school}/rooms/new                | coordinator's thing
            POST /places/schools/{school}/rooms                    | coordinator's thing
            GET  /places/schools/{school}/room                     | coordinator's thing
            POST /places/schools/{school}/room                     | coordinator's thing
            GET  /places/schools/{school}/tanks/new                | coordinator's thing
            POST /places/schools/{school}/tanks                    | coordinator's thing
            GET  /places/tanks/{tank}                              | coordinator's thing
            POST /places/tanks/{tank}                              | coordinator's thing
            POST /places/tanks/{tank}/retirement                   | coordinator's thing
            POST /places/tanks/{tank}/return                       | coordinator's thing
            GET  /places/kits                                      | coordinator's page
            GET  /places/kits/new                                  | coordinator's page
            POST /places/kits                                      | coordinator's page
            GET  /places/kits/kit                                  | coordinator's thing
            POST /places/kits/kit                                  | coordinator's thing

            GET  /season                                           | coordinator's page
            GET  /season/new                                       | coordinator's page
            POST /season                                           | coordinator's page
            GET  /season/{season}                                  | coordinator's thing
            GET  /season/{season}/edit                             | coordinator's thing
            POST /season/{season}                                  | coordinator's thing
            GET  /season/{season}/tanks/{tank}/lots/new            | coordinator's thing
            POST /season/{season}/tanks/{tank}/lots                | coordinator's thing
            GET  /season/{season}/tanks/{tank}/lots/{lot}          | coordinator's thing
            POST /season/{season}/tanks/{tank}/lots/{lot}          | coordinator's thing
            GET  /years                                            | coordinator's page
            GET  /years/import                                     | coordinator's page
            POST /years/import                                     | coordinator's page
            GET  /years/{past}.csv                                 | coordinator's thing
            POST /years/{past}/withdrawn                           | coordinator's page
            GET  /season/{season}/calendar                         | tank for the rounds
            GET  /tanks/{tank}/calendar                            | class's page
            POST /tanks/{tank}/calendar                            | class's page
            POST /tanks/{tank}/calendar/{milestone}/withdrawn      | class's page
            GET  /tanks/{tank}/count                                | tank's page
            GET  /season/{season}/tanks/{tank}/count               | tank's page
            GET  /season/{season}/tanks/{tank}/count/{kind}        | tank's page
            POST /season/{season}/tanks/{tank}/count/{kind}        | tank's page
            GET  /season/{season}/tanks/{tank}/count/deaths/{day}  | tank's page
            POST /season/{season}/tanks/{tank}/count/deaths/{day}  | tank's page
            POST /season/{season}/tanks/{tank}/count/entries/{entry}/withdrawn | tank's page
            GET  /season/{season}/tanks/{tank}/count/lots/{eggs}/withdrawn | coordinator's thing
            POST /season/{season}/tanks/{tank}/count/lots/{eggs}/withdrawn | coordinator's thing
            GET  /season/{season}/summary                          | coordinator's thing
            GET  /season/{season}/summary/rows/{figure}            | coordinator's thing
            GET  /season/{season}/summary/freeze                   | coordinator's thing
            POST /season/{season}/summary/freeze                   | coordinator's thing
            GET  /season/{season}/summary/versions/{version}       | coordinator's thing
            POST /season/{season}/summary/versions/{version}/links | coordinator's thing
            POST /season/{season}/summary/versions/{version}/links/{handover}/withdrawn | coordinator's thing
            GET  /season/{season}/summary.csv                      | coordinator's thing
            GET  /season/{season}/summary.zip                      | coordinator's thing
            GET  /season/{season}/summary.xlsx                     | coordinator's thing
            GET  /season/{season}/summary.pdf                      | coordinator's thing
            GET  /season/{season}/summary.json                     | coordinator's thing

            GET  /season/{season}/egg-days                         | rounds' thing
            GET  /season/{season}/egg-days/new                     | coordinator's thing
            POST /season/{season}/egg-days                         | coordinator's thing
            GET  /season/{season}/egg-days/{run}                   | rounds' thing
            GET  /season/{season}/egg-days/{run}/edit              | coordinator's thing
            POST /season/{season}/egg-days/{run}                   | coordinator's thing
            POST /season/{season}/egg-days/{run}/called-off        | coordinator's thing
            GET  /season/{season}/egg-days/{run}/stops             | coordinator's thing
            POST /season/{season}/egg-days/{run}/stops             | coordinator's thing
            POST /season/{season}/egg-days/{run}/stops/{tank}/earlier | coordinator's thing
            POST /season/{season}/egg-days/{run}/stops/{tank}/later | coordinator's thing
            POST /season/{season}/egg-days/{run}/checks            | rounds' thing
            POST /season/{season}/egg-days/{run}/checks/{check}/withdrawn | rounds' thing
            GET  /season/{season}/egg-days/{run}/sheet             | rounds' thing
            GET  /season/{season}/egg-days/{run}/sheet.pdf         | rounds' thing
            GET  /season/{season}/egg-days/{run}/tanks/{tank}      | tank's page
            POST /season/{season}/egg-days/{run}/tanks/{tank}/tempering | tank's page
            POST /season/{season}/egg-days/{run}/tanks/{tank}/receipt | tank's page
            POST /season/{season}/egg-days/{run}/tanks/{tank}/receipt/withdrawn | rounds' thing
            GET  /release                                          | one's own page
            GET  /release/rules                                    | coordinator's page
            POST /release/rules                                    | coordinator's page
            GET  /release/sites/new                                | coordinator's page
            POST /release/sites                                    | coordinator's page
            GET  /release/sites/{site}                             | chapter's thing
            GET  /release/sites/{site}/edit                        | coordinator's thing
            POST /release/sites/{site}                             | coordinator's thing
            GET  /release/sites/{site}/approvals/new               | coordinator's thing
            POST /release/sites/{site}/approvals                   | coordinator's thing
            GET  /release/sites/{site}/approvals/{approval}        | coordinator's thing
            POST /release/sites/{site}/approvals/{approval}        | coordinator's thing
            POST /release/sites/{site}/approvals/{approval}/withdrawn | coordinator's thing
            GET  /release/sites/{site}/checks/new                  | chapter's thing
            POST /release/sites/{site}/checks/new                  | chapter's thing
            GET  /release/sites/{site}/checks/{streamCheck}        | chapter's thing
            POST /release/sites/{site}/checks/{streamCheck}/withdrawn    | coordinator's thing
            GET  /release/plans/new                                | coordinator's page
            POST /release/plans                                    | coordinator's page
            GET  /release/plans/{plan}                             | tank's page
            POST /release/plans/{plan}/checks                      | tank's page
            GET  /release/plans/{plan}/tanks/{tank}                | tank's page
            POST /release/plans/{plan}/tanks/{tank}                | tank's page
            GET  /release/plans/{plan}/edit                        | coordinator's thing
            POST /release/plans/{plan}                             | coordinator's thing
            POST /release/plans/{plan}/dropped                     | coordinator's thing

            POST /api/v1/tanks/{tank}/readings                     | tank for scripts
            GET  /api/v1/tanks/{tank}/readings                     | tank for scripts
            GET  /api/v1/tanks/{tank}/readings/{reading}           | tank for scripts
            POST /api/v1/tanks/{tank}/senml                        | tank for scripts
            POST /api/v1/readings:batch                            | chapter for scripts
            GET  /api/v1/rounds                                    | chapter for scripts
            GET  /api/v1/seasons/{season}/summary                  | season for scripts
            GET  /api/v1/seasons/{season}/summary.csv              | season for scripts
            GET  /api/v1/seasons/{season}/summary.xlsx             | season for scripts
            GET  /api/v1/seasons/{season}/summary.pdf              | season for scripts
            GET  /api/v1/seasons/{season}/summary.json             | season for scripts
            GET  /api/v1/seasons/{season}/summary.zip              | season for scripts
            """;

    private static final Map<String, Map<Visitor, String>> BY_KIND = kinds();
    private static final Map<String, String> KIND_OF_ROUTE = routes();

    private Expectations() {}

    /** @return yes, own, ask, -, 401 or 403 by visitor; empty for a route that is not in the table */
    static Optional<Map<Visitor, String>> of(String method, String path) {
        return Optional.ofNullable(KIND_OF_ROUTE.get(method + " " + path)).map(BY_KIND::get);
    }

    /** Method, a space and the path with its parameters in braces. */
    static List<String> known() {
        return List.copyOf(KIND_OF_ROUTE.keySet());
    }

    private static Map<String, Map<Visitor, String>> kinds() {
        Map<String, Map<Visitor, String>> kinds = new LinkedHashMap<>();
        KINDS.lines().skip(1).forEach(line -> {
            String[] parts = line.split("\\|", 2);
            List<String> cells = new ArrayList<>(List.of(parts[1].replace("|", " ").strip().split("\\s+")));
            Map<Visitor, String> row = new EnumMap<>(Visitor.class);
            for (Visitor visitor : Visitor.values()) {
                row.put(visitor, cells.remove(0));
            }
            kinds.put(parts[0].strip(), row);
        });
        return kinds;
    }

    private static Map<String, String> routes() {
        Map<String, String> routes = new LinkedHashMap<>();
        ROUTES.lines().filter(line -> !line.isBlank()).forEach(line -> {
            String[] parts = line.split("\\|");
            routes.put(parts[0].strip().replaceAll("\\s+", " "), parts[1].strip());
        });
        return routes;
    }
}
