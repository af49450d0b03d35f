#include "app/window/program.h"

#include "app/window/main_window.h"
#include "app/window/start_up.h"
#include "app/wording/language.h"

#include <QApplication>
#include <QScreen>
#include <QSettings>

#include <algorithm>
#include <array>

namespace rig {

namespace {

const QString kLanguage = QStringLiteral("language");
const QString kPlace = QStringLiteral("window/place");
const QString kColours = QStringLiteral("look/colours");
const QString kDark = QStringLiteral("look/dark"); // what was remembered before there were three
const QString kText = QStringLiteral("look/text");

QString chosenLanguage()
{
    return languageOf(QSettings{}.value(kLanguage).toString(), QLocale::system());
}

const std::array<std::pair<Scheme, QString>, 3> kSchemes{{
    {Scheme::Light, QStringLiteral("light")},
    {Scheme::Dark, QStringLiteral("dark")},
    {Scheme::Sunlight, QStringLiteral("sunlight")},
}};

QString wordOf(Scheme scheme)
{
    return std::ranges::find(kSchemes, scheme, &std::pair<Scheme, QString>::first)->second;
}

Scheme rememberedScheme(const QSettings& settings, Scheme desktop)
{
    const QString word = settings.value(kColours).toString();
    const auto known = std::ranges::find(kSchemes, word, &std::pair<Scheme, QString>::second);
    if (known != kSchemes.end())
        return known->first;
    if (settings.contains(kDark))
        return settings.value(kDark).toBool() ? Scheme::Dark : Scheme::Light;
    return desktop;
}

Look rememberedLook(const Look& desktop)
{
    const QSettings settings;
    Look look;
    look.theme = Theme::of(rememberedScheme(settings, desktop.theme.scheme()));
    look.fonts.scale = withinSizes(settings.value(kText, desktop.fonts.scale).toDouble());
    return look;
}

} // namespace

Program::Program(const Clock& clock, Prompts& prompts, const Look& desktop)
    : m_clock{clock}, m_prompts{prompts}, m_speech{std::make_unique<Speech>(chosenLanguage())}
{
    makeWindow();
    setLook(rememberedLook(desktop));
}

Program::~Program() = default;

void Program::makeWindow()
{
    m_window = std::make_unique<MainWindow>(m_clock, m_prompts);
    connect(m_window.get(), &MainWindow::closed, this, &Program::remember);
    // The press comes from the window that is made anew, and ends first.
    connect(m_window.get(), &MainWindow::languageAsked, this, &Program::speak, Qt::QueuedConnection);
}

void Program::setLook(const Look& look)
{
    m_window->setLook(look);
}

void Program::show()
{
    const QByteArray place = QSettings{}.value(kPlace).toByteArray();
    if (!place.isEmpty() && m_window->restoreGeometry(place))
        return m_window->show();
    showWithin(*m_window, m_window->screen()->availableSize());
}

void Program::remember() const
{
    QSettings settings;
    settings.setValue(kPlace, m_window->saveGeometry());
    settings.setValue(kColours, wordOf(m_window->look().theme.scheme()));
    settings.remove(kDark);
    settings.setValue(kText, m_window->look().fonts.scale);
}

void Program::speak(const QString& code)
{
    QSettings{}.setValue(kLanguage, code);
    remember();
    const Look look = m_window->look();
    const std::unique_ptr<MainWindow> before = std::move(m_window);
    LeftOff left = before->leaveOff();
    m_speech.reset(); // before the next one: it takes its own words back
    m_speech = std::make_unique<Speech>(chosenLanguage());
    makeWindow();
    setLook(look);
    m_window->goOnFrom(std::move(left));
    show();
}

} // namespace rig
