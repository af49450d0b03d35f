#include "app/wording/language.h"

#include "app/wording/english_plurals.h"

#include <QCoreApplication>
#include <QLibraryInfo>
#include <QStringList>

#include <algorithm>

namespace rig {

namespace {

constexpr int kOctober = 10;

bool isSpoken(const QString& code)
{
    return std::ranges::any_of(languages(), [&code](const Language& one) { return one.code == code; });
}

const QString& english() { return languages().front().code; }

} // namespace

const std::vector<Language>& languages()
{
    static const std::vector<Language> all{{QStringLiteral("en"), QStringLiteral("English")},
                                           {QStringLiteral("de"), QStringLiteral("Deutsch")},
                                           {QStringLiteral("fr"), QStringLiteral("Français")}};
    return all;
}

QString languageOf(const QString& wanted, const QLocale& system)
{
    if (isSpoken(wanted))
        return wanted;
    for (const QString& one : system.uiLanguages()) {
        const QString code = one.section('-', 0, 0);
        if (isSpoken(code))
            return code;
    }
    return english();
}

QString spokenLanguage() { return languageOf(QLocale{}.name().section('_', 0, 0), QLocale::c()); }

QLocale figuresOf(const QString& code, const QLocale& system)
{
    const QLocale usual =
        code == english() ? QLocale{QLocale::English, QLocale::UnitedKingdom} : QLocale{code};
    if (system.language() != usual.language())
        return usual;
    // A system may be asked for words of one language and figures of another: LANGUAGE=de beside LANG=C.
    const QLocale own{system.language(), system.territory()};
    return system.monthName(kOctober) == own.monthName(kOctober) ? system : usual;
}

Speech::Speech(const QString& code, const QLocale& system)
{
    QLocale::setDefault(figuresOf(code, system));
    const auto install = [this](std::unique_ptr<QTranslator> one) {
        QCoreApplication::installTranslator(one.get());
        m_installed.push_back(std::move(one));
    };
    install(std::make_unique<EnglishPlurals>());
    // What the library says itself, in its questions for a file; there where the system brings it.
    if (auto library = std::make_unique<QTranslator>();
        code != english() &&
        library->load(QStringLiteral("qtbase_") + code, QLibraryInfo::path(QLibraryInfo::TranslationsPath)))
        install(std::move(library));
    if (auto words = std::make_unique<QTranslator>();
        code != english() && words->load(QStringLiteral(":/languages/rigband_%1.qm").arg(code)))
        install(std::move(words));
}

Speech::~Speech()
{
    for (const auto& one : m_installed)
        QCoreApplication::removeTranslator(one.get());
    QLocale::setDefault(m_before);
}

} // namespace rig
