package coldseam.envelope.file.house;

import coldseam.envelope.Retrofit;
import coldseam.files.Default;
import coldseam.files.Doc;
import coldseam.files.Located;
import coldseam.files.Noun;
import org.eclipse.collections.api.list.ImmutableList;

@Noun("what stays of an old house")
@Doc("An old house: the structure of every surface stays, but for those that are named here.")
record FileRetrofit(
        @Doc("Names of the surfaces whose structure is built new.") @Default("")
        ImmutableList<Located<String>> builtNew,

        @Doc("Parts that are taken down, such as parapet; details say which they need down.") @Default("")
        ImmutableList<Located<String>> takenDown) {

    Retrofit retrofit() {
        return new Retrofit(
                builtNew.collect(Located::value).toSet().toImmutable(),
                takenDown.collect(Located::value).toSet().toImmutable());
    }
}
