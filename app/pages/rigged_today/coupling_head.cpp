#include "app/pages/rigged_today/coupling_head.h"

#include "app/pages/rigged_today/labelled_choice.h"
#include "app/widgets/beside_or_below.h"
#include "app/widgets/parts.h"
#include "app/widgets/photo_tile.h"
#include "app/wording/connected_words.h"
#include "app/wording/rigged_words.h"

#include <QHBoxLayout>
#include <QVBoxLayout>

#include <cmath>

namespace rig {

CouplingHead::CouplingHead(QVBoxLayout* layout, QObject* parent) : QObject{parent}
{
    auto* beside = new QWidget;
    auto* top = new QHBoxLayout{beside};
    top->setContentsMargins(0, 0, 0, 0);
    top->setSpacing(10);
    m_title = labelOf({}, "title", "couplingTitle");
    m_photo = new PhotoTile{"lookPhoto"};
    m_photo->setFocusPolicy(Qt::TabFocus); // a click leaves the keys where they were
    m_photo->hide();
    top->addWidget(m_photo, 0, Qt::AlignTop);
    connect(m_photo, &QAbstractButton::clicked, this, &CouplingHead::photoAsked);
    const LabelledChoice person = addLabelledChoice(top, RiggedWords::measuredBy(), "measuredBy");
    m_personLabel = person.label;
    m_person = person.box;
    const LabelledChoice gauge = addLabelledChoice(top, RiggedWords::gauge(), "measuredWith");
    m_gaugeLabel = gauge.label;
    m_gaugeLabel->setText(RiggedWords::withKey(RiggedWords::gauge(), RiggedWords::keyGauge()));
    m_gauge = gauge.box;
    connect(m_person, &QComboBox::activated, this, [this] {
        if (const auto chosen = m_person->chosen<PersonId>())
            emit personChosen(*chosen);
    });
    connect(m_gauge, &QComboBox::activated, this, [this] {
        if (const auto chosen = m_gauge->chosen<GaugeId>())
            emit gaugeChosen(*chosen);
    });
    auto* whole = new BesideOrBelow{m_title, beside};
    whole->setContentsMargins(20, 12, 20, 0);
    layout->addWidget(whole);
}

void CouplingHead::display(const RiggedTodayView& view, const CouplingSheet& sheet)
{
    m_title->setText(QString::fromStdString(sheet.coupling.name));
    fillPersons(view, sheet);
    m_gauge->fill(RiggedWords::chooseGauge(), view.gauges);
    m_gauge->choose(sheet.gauge ? std::optional{sheet.gauge->id} : std::nullopt);
    for (QWidget* part : std::initializer_list<QWidget*>{m_gaugeLabel, m_gauge})
        part->setVisible(sheet.flow.asks.parts.gap);
}

void CouplingHead::fillPersons(const RiggedTodayView& view, const CouplingSheet& sheet)
{
    const bool first = sheet.turn == Turn::First;
    const QString firstDoes =
        sheet.flow.asks.parts.gap ? RiggedWords::measuredBy() : RiggedWords::lookedAtBy();
    const QString label = first ? firstDoes : RiggedWords::lookedBy();
    m_personLabel->setText(RiggedWords::withKey(label, RiggedWords::keyPerson()));
    m_person->setAccessibleName(label);
    std::vector<ChoiceBox::Entry> persons;
    for (const Person& person : view.persons) {
        const QString name = QString::fromStdString(person.name);
        const auto why = sheet.notSecond.find(person.id);
        const bool isOpen = first || why == sheet.notSecond.end();
        persons.push_back(ChoiceBox::entry(isOpen ? name : ConnectedWords::cannotBeSecond(name, why->second),
                                           person.id, isOpen));
    }
    m_person->fillWith(RiggedWords::choosePerson(), persons);
    m_person->choose(sheet.person);
}

bool CouplingHead::takeKey(const QKeyEvent& event)
{
    if (isKey(event, RiggedWords::keyPerson()))
        return openChoice(m_person);
    if (isKey(event, RiggedWords::keyGauge()))
        return openChoice(m_gauge);
    return opensByEnter(event, m_person) || opensByEnter(event, m_gauge);
}

void CouplingHead::showPhoto(const QImage& picture, const QString& small, const QString& whole)
{
    m_photo->setPhoto(picture, small, whole);
    m_photo->setVisible(!picture.isNull());
}

// As high as the choosers beside it where there is no room for more.
void CouplingHead::setLook(const Look& look, bool hasRoom)
{
    constexpr double kSmall = 30;
    constexpr double kLarge = 124;
    m_photo->setLook(look);
    m_photo->setHeight(static_cast<int>(std::lround((hasRoom ? kLarge : kSmall) * look.fonts.scale)));
}

QString CouplingHead::person() const
{
    return m_person->currentText();
}

} // namespace rig
