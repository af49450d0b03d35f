#pragma once

#include "app/pages/rigged_today/rigged_today_presenter.h"
#include "app/theme/theme.h"

#include <QObject>

class QImage;
class QLabel;
class QVBoxLayout;

namespace rig {

class ChoiceBox;
class PhotoTile;

// Which joint it is, who works at it and what is measured with.
class CouplingHead : public QObject
{
    Q_OBJECT

public:
    CouplingHead(QVBoxLayout* layout, QObject* parent);

    void display(const RiggedTodayView& view, const CouplingSheet& sheet);
    QString person() const; // as it is chosen
    // The keys of the two choosers. False when it is none of them.
    bool takeKey(const QKeyEvent& event);
    // Beside the name of the joint; nothing where there is no photo, or what it would cover stops the joint.
    void showPhoto(const QImage& picture, const QString& small, const QString& whole);
    void setLook(const Look& look, bool hasRoom);

signals:
    void personChosen(rig::PersonId person);
    void gaugeChosen(rig::GaugeId gauge);
    void photoAsked();

private:
    void fillPersons(const RiggedTodayView& view, const CouplingSheet& sheet);

    QLabel* m_title = nullptr;
    QLabel* m_personLabel = nullptr;
    QLabel* m_gaugeLabel = nullptr;
    ChoiceBox* m_person = nullptr;
    ChoiceBox* m_gauge = nullptr;
    PhotoTile* m_photo = nullptr;
};

} // namespace rig
