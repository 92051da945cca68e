package org.tankrounds.rounds;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.ObjectMapper;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.tankrounds.advice.Act;
import org.tankrounds.advice.Advice;
import org.tankrounds.forecast.Forecaster;
import org.tankrounds.forecast.Outlook;
import org.tankrounds.testing.Water;

/** A stored forecast, as this version of the service wrote it or another one. */
class ForecastDetailTest {
    private static final ObjectMapper JSON = new ObjectMapper();

    @Test
    void whatIsToldBesideAForecast_comesBackAsItWas() throws Exception {
        Outlook outlook = outlook();
        ForecastDetail read = JSON.readValue(written(outlook), ForecastDetail.class);
        assertThat(read.waysHeld()).contains(outlook.ways());
        assertThat(read.tellingHeld()).isEqualTo(outlook.telling());
        assertThat(read.heldThen()).contains(outlook.held());
    }

    @Test
    void rowOfAnotherVersion_isReadWithoutWhatItDoesNotSay() throws Exception {
        String other = written(outlook()).replaceAll("\"filter\":\"\\w+\"", "\"filter\":\"SINGING\",\"mood\":1");
        assertThat(JSON.readValue(other, ForecastDetail.class).heldThen()).isEmpty();
        String older = "{\"stage\":\"EGG\",\"fishAlive\":1,\"reasons\":[],\"acts\":[],\"series\":[],\"recent\":{}}";
        ForecastDetail read = JSON.readValue(older, ForecastDetail.class);
        assertThat(read.waysHeld()).isEmpty();
        assertThat(read.heldThen()).isEmpty();
        assertThat(read.tellingHeld()).isEmpty();
    }

    @Test
    void actThatThisVersionDoesNotKnow_isLeftOut() throws Exception {
        String row = "{\"stage\":\"EGG\",\"fishAlive\":1,\"reasons\":[],\"series\":[],\"recent\":{},\"acts\":["
                + "{\"kind\":\"SING_TO_THEM\",\"unit\":\"\",\"secondUnit\":\"\",\"asks\":\"\",\"basis\":\"\"},"
                + "{\"kind\":\"LOOK_AT_FISH\",\"unit\":\"\",\"secondUnit\":\"\",\"asks\":\"\",\"basis\":\"\"}]}";
        assertThat(JSON.readValue(row, ForecastDetail.class).advice().acts()).extracting(Act::kind)
                .containsExactly(Act.Kind.LOOK_AT_FISH);
    }

    private static Outlook outlook() {
        return new Forecaster().lookAhead(Water.feedingFish().build(),
                Water.FINE.withNitriteMgPerL(0.13).lastRead(1), Water.AS_OF).outlook();
    }

    private static String written(Outlook outlook) throws Exception {
        return JSON.writeValueAsString(ForecastDetail.of(
                new TankForecast(1, Water.AS_OF, outlook, Advice.NONE, Map.of(), Optional.empty())));
    }
}
