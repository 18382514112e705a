/**
 * The parts of Phaser this game draws with, and no more: game loop, scene, scale and display list on the
 * canvas renderer. What these bring along and nobody calls is left out by the build (`.ci/enginePlugin.ts`), so a
 * first ride starts sooner; browser tests that play rides guard that nothing needed is missing. The order matters:
 * plugins register themselves.
 */
import 'phaser/src/renderer';
import 'phaser/src/events/EventEmitter';
import 'phaser/src/scene/ScenePlugin';
import 'phaser/src/gameobjects/DisplayList';
import 'phaser/src/gameobjects/UpdateList';
import 'phaser/src/gameobjects/GameObjectFactory';
import 'phaser/src/gameobjects/GameObjectCreator';
import 'phaser/src/cameras/2d/CameraManager';
import type Phaser from 'phaser';
import coreEvents from 'phaser/src/core/events';
import game from 'phaser/src/core/Game';
import gameObject from 'phaser/src/gameobjects/GameObject';
import scaleEvents from 'phaser/src/scale/events';
import sceneEvents from 'phaser/src/scene/events';
import scene from 'phaser/src/scene/Scene';

// The sources carry no types of their own; these are the same things as in the published package.
export const Game = game as typeof Phaser.Game;
export const Scene = scene as typeof Phaser.Scene;
export const GameObject = gameObject as typeof Phaser.GameObjects.GameObject;
export const CoreEvents = coreEvents as typeof Phaser.Core.Events;
export const SceneEvents = sceneEvents as typeof Phaser.Scenes.Events;
export const ScaleEvents = scaleEvents as typeof Phaser.Scale.Events;

/** Draw with the 2D canvas: measured faster than WebGL for this picture without a graphics card. */
export const CANVAS = 1 satisfies typeof Phaser.CANVAS;
/** The game keeps the size of its canvas itself. */
export const SCALE_NONE = 0;
